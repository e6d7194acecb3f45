/** A tablet that nobody has touched for a while. */
export const cover = {
  warning: '¿Hay alguien aquí?',
  warningHint:
    'Nadie ha tocado esta tableta. Lo que dijeron las clientas está por cubrirse; un toque donde sea la deja abierta.',
  left: (seconds: string) => `Quedan ${seconds}.`,
  stay: 'Dejarla abierta',
  title: 'Cubierta',
  hint: 'Un toque vuelve a donde estaba; una silla, a quien está en ella.',
  goOn: 'Seguir',
  chair: (chair: string) => `Silla ${chair}`,
  free: (chair: string) => `${chair} · libre`,
  noClock: 'sin reloj',
};
