import type { heatSprayForm } from '../../../../shared/records/forms/heatSpray';
import type { FormWords } from '../../formWords';

export const heatSprayWords: FormWords<typeof heatSprayForm> = {
  finish: {
    ask: 'How is it finished today?',
    options: { noHotTool: 'No hot tool', styled: 'With a hot tool' },
  },
  spray: { ask: 'Which spray from the shelf?' },
  tool: {
    ask: 'Which tool?',
    options: { flatIron: 'Flat iron', curlingIron: 'Curling iron', hotBrush: 'Hot brush', dryer: 'Dryer' },
  },
  settingC: { ask: 'Setting' },
};
