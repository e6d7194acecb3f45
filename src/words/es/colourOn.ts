export const colourOn = {
  title: 'Color puesto',
  lookAsk: '¿Siente escozor o ardor?',
  askAloud: 'Pregúntele en voz alta. Luego el cabello: limpie un mechón, tire suave.',
  yes: 'Escuece o quema',
  hair: {
    sound: 'No siente nada, cabello sano',
    stretchy: 'No siente nada, elástico de más',
    breaking: 'Se rompe o es una papilla',
  },
  hairBreaks: (zone: string) => `El cabello se rompe: enjuague ${zone} ya. Tibia, sin frotar, sin peine.`,
  hairStretchy: (zone: string) => `Elástico de más al revisar: enjuague ${zone} ya, no espere.`,
  rinsed: (zone: string) => `Enjuagado: ${zone}`,
  rinsedEarly: (zone: string) => `Enjuagado antes: ${zone}`,
  look: (zone: string) => `Revise: ${zone}`,
  mixedAt: (time: string) => `Pesado ${time}`,
  onSince: (time: string) => `empezado ${time}`,
  allOnSince: (time: string) => `todo puesto ${time}`,
  toner: 'Matizador, sin calor',
  allOn: 'Ya está todo puesto',
  /** On hair nothing was ever done to. */
  rootsToCome: (useBy: string) => `Raíces al final: antes de ${useBy}`,
  rootsTooLate: 'Raíces sin aplicar, y ya es tarde',
  rootsOn: 'Raíces ya: todo puesto',
  /** Which time the clock counts. */
  fromBegun: 'El reloj corre desde que se empezó.',
  lookedTimes: (count: string) => `Revisiones hasta ahora: ${count}`,
  moreTime: 'Más tiempo',
  /** The pause before another bowl: the skin is answered with the tap that begins. */
  beforeMore: '¿Piel tranquila? Guantes. Nunca en pestañas ni cejas. Nunca lo tape.',
  /** Of a bowl that waits while another is on. */
  notCalmThen:
    'No se pone nada más en piel que no está tranquila. ¿Le escuece lo que lleva? Enjuáguelo. Tire este bol.',
  rinseNow: 'Enjuague ya, ella tiene un alto.',
};
