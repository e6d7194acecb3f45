/** A heat spray of the shelf: what its list and its maker say of it. */
export const spray = {
  open: 'Su lista',
  openEmpty: 'Agregar su lista',
  tellsTitle: 'Qué dice la lista',
  noListYet: 'Aún sin lista. Lo que diga estará aquí en cuanto se escriba.',
  notRead: 'Aún sin leer: bajo la lista se ve qué lo impide.',
  tellsOnly:
    'Una lista no dice cantidades, ni hasta qué calor sirve un protector. Estar por debajo de una cifra no promete nada.',
  makerSays: (heat: string) => `El fabricante dice hasta ${heat}.`,
  /** Today's setting is above it. */
  makerSaysLess: (heat: string) => `El fabricante dice hasta ${heat}. Lo de hoy es más.`,
  tellsAt: (setting: string) => `La lista a ${setting}`,
  noList: 'No tiene lista: escríbala una vez en los ajustes.',
};
