import type { CautionMoment, StatedCautionId } from '../../../shared/judgement/cautions';
import { figures } from './figures';

const moments: Readonly<Record<CautionMoment, string>> = {
  before: 'Antes',
  skinTest: 'Prueba de piel',
  glass: 'Vaso',
  mixing: 'Al mezclar',
  onHer: 'En ella',
  ifItBurns: 'Si arde',
  heat: 'Calor',
  home: 'En casa',
};

const all: Readonly<Record<StatedCautionId, string>> = {
  reactedEver: 'Cualquier reacción a un color para el cabello, alguna vez: no coloree.',
  blackTattoo: 'Reaccionó a un tatuaje temporal de henna negra: no coloree.',
  skinToday:
    'Sarpullido o quemadura en la cara, o cuero cabelludo sensible, irritado o dañado: no coloree hasta que sane.',
  underAge: 'El color para el cabello no es para menores de 16.',
  persulfates: 'Silbidos al respirar o ronchas por decolorante, alguna vez: nunca más.',
  testEachTime: 'Una prueba de piel cada vez, leída a los dos días, también para su propio color.',
  makersProtocol:
    'El fabricante dice cómo, dónde y cuánto tiempo. La prueba no da vía libre al decolorante, y repetirla puede sensibilizar por sí misma.',
  neverMeansSafe:
    '“Nada visible” nunca significa seguro: de 42 personas con alergia conocida, 38 lo notaron en el antebrazo y 39 detrás de la oreja.',
  metalSalts:
    'Mezclas de henna, restaurador de canas, tinte de caja desconocido: primero un recorte en el vaso.',
  poolWater:
    'El agua de piscina o de pozo también deja metal en el cabello: donde hubo mucha, un recorte también.',
  glassAndGoggles:
    'Fuera de la cabeza, extractor, vidrio o plástico, guantes y gafas. Calor, burbujas, olor u otro color: no coloree.',
  keptCutting: `Guarde el recorte ${figures.cuttingHours} h: lo que no cambió aún puede romperse al día siguiente.`,
  gloves: 'Guantes de puño largo, nunca de látex, un par nuevo para cada clienta.',
  ventilation: 'Extractor encendido donde mezcla.',
  powder: 'Polvo: gafas y tapa puestas, cuchara baja. Quien tiene asma no lo mezcla.',
  bowlAndLid:
    'Plástico o vidrio, nunca metal. Nunca tape ni guarde lo mezclado: revienta. Mantenga seco el polvo.',
  lashesAndBrows: 'Nunca en pestañas ni cejas.',
  noDryer: 'Ni secadora ni lámpara sobre decolorante, salvo que el fabricante lo diga.',
  relaxedLately: 'Alisador o permanente: espere dos semanas. Hidróxido y tio nunca se solapan.',
  breathFirst: 'Garganta, respiración o desmayo: primero el número de emergencia, luego enjuague.',
  rinseNow: `Escuece o quema: enjuague ya, agua corriente fresca, ${figures.burnRinse} si es quemadura. No neutralice nada. Ampollas: al médico; las quemaduras pueden verse tarde.`,
  eyes: `En los ojos: enjuague de inmediato, ${figures.eyesRinseFrom} a ${figures.eyesRinseTo}, fuera los lentes de contacto, luego un médico.`,
  noSpray: 'Ni aerosol ni espray con alcohol cerca de placas calientes: se incendia.',
  ironsStayHot: 'Una plancha apagada sigue quemando de 6 a 8 min.',
  restFromHeat: `Nada caliente sobre cabello con color por ${figures.restHours} h.`,
  lateItching: 'Diga a quién llama ella si hay comezón o sarpullido tardíos.',
  pregnancy: 'Embarazada: consejo, nunca un bloqueo, y nada de ello se guarda.',
};

export const cautionList = {
  open: 'Precauciones',
  moments,
  all,
  note: 'La ley local, las instrucciones del fabricante y el criterio de un profesional con licencia van primero.',
  pregnant: {
    open: '¿Embarazada?',
    title: 'Está embarazada: qué decir',
    lines: [
      'Lo decide ella. Nada aquí la detiene, y nada de ello se anota.',
      'Los servicios de salud dicen: la mayoría de los estudios ve seguro colorear; muy poco atraviesa la piel sana.',
      'Algunas esperan a que pasen las primeras doce semanas.',
      'Lejos del cuero cabelludo no toca piel. Guantes, aire fresco, no más de lo necesario, enjuague bien.',
      'Cabello y piel pueden responder distinto que antes: prueba de piel y mechón, como siempre.',
      'Con dudas o malestar: primero su partera o su médico.',
    ],
    source: 'Consejo de servicios de salud, leído de segunda mano.',
  },
};
