export const clockDoubt = {
  title: '¿Se atrasó el reloj de la tableta?',
  newest: (time: string) => `Esta tableta ya ha mostrado ${time}.`,
  now: (time: string) => `Ahora dice ${time}.`,
  behind: (time: string) => `Eso es ${time} de atraso.`,
  rinseFirst: '¿A alguien le arde o le pica la piel? Enjuague ya; esto se resuelve después.',
  why: 'Hasta resolverlo no se guarda ningún paso: todos los relojes de la barra cuentan desde estas horas.',
  yes: 'La tableta ya está bien',
  yesHint: 'Los relojes en marcha se mueven también: cada uno habrá corrido lo que ha corrido.',
  noHint:
    '¿O está mal la tableta? Entonces ponga su reloj en los ajustes de la propia tableta: esto se va solo.',
  stillWrong: 'Sigue atrasada. Toque otra vez, o ponga el reloj de la tableta.',
  waiting: 'Moviendo los relojes …',
};
