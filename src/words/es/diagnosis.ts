import { sayCount } from './sayCount';

/** Line by line how tablet and station are, and what to do about it. */
export const diagnosis = {
  title: 'Diagnóstico',
  tile: '¿Está en orden esta tableta?',
  reading: 'Mirando …',
  allWell: 'Todo está en orden.',
  toSee: (count: string) => `${sayCount(count, 'cosa', 'cosas')} por atender.`,
  good: 'En orden',
  look: 'Atender',
  again: 'Mirar otra vez',
  topics: {
    build: 'Versión',
    page: 'Sin la red',
    copies: 'Dos copias',
    aside: 'Apartado',
    kept: 'Se guarda',
    room: 'Espacio',
    backup: 'Última copia',
    clock: 'Reloj',
    screen: 'Pantalla',
    sound: 'Sonido',
    glass: 'Ventana',
  },
  build: {
    runs: (build: string) => `Funciona ${build}.`,
    worked: 'Una versión en la que se trabaja.',
    waits: (build: string, next: string) => `Funciona ${build}; espera ${next}.`,
    toTake: 'Se ofrece en la barra cuando no hay nadie y ningún reloj corre.',
  },
  page: {
    toKeep: 'Sírvala por https o desde esta máquina, en una ventana normal del navegador, y ábrala de nuevo.',
    asking: 'Aún no se sabe.',
  },
  copies: {
    good: 'Responden las dos copias de lo guardado.',
    watching: 'Otra ventana escribe y lo sabe.',
    /** Of one copy, by its name in the notices, and what it does not do. */
    bad: (copy: string, why: string) => `Solo se escribe una copia: ${copy} ${why}.`,
    none: 'Ninguna copia responde: no se puede guardar nada.',
    todo: 'Guarde ahora la estación en un archivo, cierre otras ventanas, reinicie la tableta y mire aquí otra vez.',
    full: 'Haga espacio en la tableta, reiníciela y mire aquí otra vez.',
  },
  aside: {
    none: 'No se apartó nada.',
    some: (count: string) =>
      `No se pudo leer y quedó apartado, sin tocar: ${sayCount(count, 'registro', 'registros')}.`,
    todo: 'Guarde el archivo de ayuda y muéstrelo a quien cuida la estación. No borre nada.',
  },
  kept: {
    yes: 'El navegador conserva lo guardado, también con la tableta llena.',
    no: 'El navegador puede borrarlo todo si la tableta se llena.',
    unknown: 'El navegador no dice si conserva lo guardado.',
    todo: 'Instale la estación (menú del navegador, “Instalar” o “Agregar a la pantalla principal”) y ábrala desde su icono.',
  },
  room: {
    taken: (used: string, all: string) => `Ocupa ${used} de los ${all} que da el navegador.`,
    unknown: 'El navegador no dice cuánto espacio hay.',
    todo: 'Guarde antes una copia y quite lo demás que haya en esta tableta.',
    bytes: (figure: string) => `${figure} MB`,
  },
  backup: {
    at: (when: string) => `Se entregó ${when}.`,
    never: 'Desde esta tableta no se guardó ninguna.',
    todo: 'Guarde una en “Copia y traslado”, en otro lugar que esta tableta.',
  },
  clock: {
    good: (zone: string) => `Nada habla en su contra. Zona horaria: ${zone}.`,
    jumped: 'Dio un salto y nadie ha dicho por qué.',
    back: 'Muestra menos que antes.',
    todo: 'Deje que la red ponga fecha y hora, y responda luego lo que la estación pregunta en la barra.',
  },
  screen: {
    dark: 'La pantalla puede apagarse.',
    todo: {
      refused: 'Conecte la tableta a la corriente, o ajústela para que no se apague.',
      unavailable: 'Ajuste la tableta para que no se apague.',
    },
  },
  sound: {
    heard: 'Se oyó la última vez que se probó.',
    notHeard: 'No se oyó la última vez que se probó.',
    untried: 'Nadie ha dicho aún que se oyó.',
    todo: 'Pruebe el sonido en “Esta tableta”, con los secadores encendidos.',
  },
  glass: {
    size: (width: string, height: string) => `${width} × ${height} puntos.`,
    asApp: 'Abierta como aplicación propia.',
    inBrowser: 'Abierta en una ventana del navegador.',
    small: 'Menos de lo que la estación necesita: algunas páginas se desplazan.',
    todo: 'Use una tableta de 10 pulgadas o más, o reduzca el tamaño de la pantalla.',
  },
  support: {
    save: 'Guardar archivo de ayuda',
    hint: 'Cómo está esta tableta, en un archivo para enviar: sin clienta, ficha ni nombre.',
  },
};
