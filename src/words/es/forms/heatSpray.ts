import type { heatSprayForm } from '../../../../shared/records/forms/heatSpray';
import type { FormWords } from '../../formWords';

export const heatSprayWords: FormWords<typeof heatSprayForm> = {
  finish: {
    ask: '¿Cómo se termina hoy?',
    short: 'Acabado',
    options: { noHotTool: 'Sin calor', styled: 'Con calor' },
  },
  spray: {
    ask: '¿Qué protector del estante?',
    short: 'Protector',
    hint: 'Nada de aerosol ni de alcohol cerca de planchas calientes.',
  },
  tool: {
    ask: '¿Qué herramienta?',
    short: 'Herramienta',
    options: {
      flatIron: 'Plancha',
      curlingIron: 'Tenaza',
      hotBrush: 'Cepillo de calor',
      dryer: 'Secadora',
    },
  },
  settingC: { ask: '¿A qué temperatura?', short: 'Temperatura' },
};
