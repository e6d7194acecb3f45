/** What the tablet itself gives, or does not: sound, a voice, a screen that stays awake, a page that opens without the network. */
export const tablet = {
  spokenTrial: 'Así se llama a una silla.',
  voice: {
    off: 'No se dice ninguna frase. Se activa en “El salón”.',
    ready: 'Después de los pulsos se dice una frase.',
    noVoice:
      'No se dice ninguna frase: esta tableta no tiene voz propia para este idioma. Los pulsos siguen.',
    refused: 'No se dice ninguna frase: el navegador se negó. Los pulsos siguen.',
    unavailable: 'No se dice ninguna frase: este navegador no habla. Los pulsos siguen.',
  },
  noLine: 'Esta tableta no habla: solo llaman los pulsos.',
  check: {
    offer: 'Probar el sonido',
    title: '¿Se oye?',
    ask: 'Póngase donde trabaja, con las secadoras encendidas. Pruebe el sonido y diga si se oyó.',
    heard: 'Lo oí',
    notHeard: 'No lo oí',
    later: 'Ahora no',
    notHeardNote: 'No se oyó: suba el volumen y pruebe otra vez',
    whatToDo: [
      'Pulse la tecla de volumen de la tableta hasta que suene fuerte.',
      'Apague el modo silencio y “no molestar”.',
      'Desenchufe lo que tenga puesto y apague lo que esté conectado sin cable.',
    ],
    stays: 'En la barra queda una nota hasta que se oiga.',
  },
  sound: {
    asleep: 'Aún sin sonido: toque una vez la pantalla.',
    unavailable: 'Sin sonido: este navegador no lo da. Tenga la barra a la vista.',
  },
  screen: {
    refused: 'La pantalla puede apagarse: enchufe la tableta.',
    unavailable: 'La pantalla puede apagarse: déjela encendida.',
  },
  page: {
    kept: 'Sin red, la estación se abre como siempre.',
    refused: 'Sin red, esta página no volvería a abrirse.',
  },
  title: 'Esta tableta',
  soundAndScreen: 'Sonido y pantalla',
  isReady: 'El sonido está listo. Llama hasta que alguien toque.',
  screenIsAwake: 'La pantalla sigue encendida mientras se vea la estación.',
  screenRests: 'La pantalla se mantiene encendida desde el primer toque.',
  tryOut: 'Probar el sonido',
  notSounded: 'No sonó: el navegador no lo dio. Pruebe otra vez.',
  tryHint: '¿No oye nada? Suba el volumen de la tableta.',
};
