/** What part this window plays. */
export const windowPart = {
  starting: 'Leyendo los registros …',
  /** After the start: the bar is in use, and what closed in earlier months is not known yet. */
  stillReading: (read: string, all: string) =>
    `Aún buscando entre clientas anteriores, ${read} de ${all} meses.`,
  opensByItself: 'Se abre sola en un momento',
  startsByItself: 'Ella empieza sola en cuanto eso termine.',
  watching: 'Esta estación está abierta en otra ventana. Esta solo mira.',
  /** Where something would be written. */
  greyHere: 'Esta ventana no puede escribir.',
  askTakeOver: 'Seguir aquí',
  asked: 'Pedido. La otra ventana anota lo que tiene y luego entrega.',
  noStore: 'Ahora no se puede escribir nada en esta tableta.',
  noStoreWhat:
    'Se muestra lo que se pudo leer. Los relojes siguen. Escriba en papel y no mezcle para ninguna clienta nueva.',
  noStoreClears: 'Cierre otras ventanas de esta estación, libere espacio en la tableta y luego:',
  reload: 'Recargar la estación',
};
