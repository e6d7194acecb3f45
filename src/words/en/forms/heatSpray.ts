import type { heatSprayForm } from '../../../../shared/records/forms/heatSpray';
import type { FormWords } from '../../formWords';

export const heatSprayWords: FormWords<typeof heatSprayForm> = {
  finish: {
    ask: 'How is it finished today?',
    short: 'Finish',
    options: { noHotTool: 'No hot tool', styled: 'With a hot tool' },
  },
  spray: {
    ask: 'Which spray from the shelf?',
    short: 'Spray',
    hint: 'No aerosol or alcohol spray near hot plates.',
  },
  tool: {
    ask: 'Which tool?',
    short: 'Tool',
    options: { flatIron: 'Flat iron', curlingIron: 'Curling iron', hotBrush: 'Hot brush', dryer: 'Dryer' },
  },
  settingC: { ask: 'At which setting?', short: 'Setting' },
};
