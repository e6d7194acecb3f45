/** A consultation that is over, while its record is still to be written. */
export const ended = {
  title: (how: string) => `Terminada: ${how}`,
  notWritten: 'Su registro aún no está escrito.',
  nothingLost: 'Todo lo anotado está guardado, y ya nada corre.',
  clears:
    'Libere espacio en la tableta y escríbalo otra vez. También se intenta cada vez que arranca la estación.',
  writeAgain: 'Escribir el registro otra vez',
};
