const failures = {
  notShared: 'No se compartió. Guárdelo como archivo.',
  folderGone: 'Esa carpeta ya no está; no se escribió nada. Elija una otra vez.',
  folderForbidden: 'Esta tableta no puede escribir en esa carpeta; no se escribió nada. Elija una otra vez.',
  notWritten:
    'No se escribió entero y no quedó nada allí. ¿Hay espacio? Intente otra vez o guárdelo como archivo.',
};

/** Ways out of the tablet beside a download. */
export const handOver = {
  share: 'Compartir',
  intoFolder: 'A una carpeta',
  intoThis: (folder: string) => `A “${folder}”`,
  anotherFolder: 'Otra carpeta',
  shared: (names: string) => `Entregado: ${names}`,
  written: (names: string, folder: string) => `En “${folder}”: ${names}`,
  failures,
};
