/** A strand in places on its paper, 600 by 76: what is filled, and the single hairs that stand off. */
interface DrawnStrand {
  readonly bodies: readonly string[];
  readonly hairs: string;
}

/** Single hairs that stand off, every so far along from here to there. */
function standOff(from: number, to: number, every: number, length: number): string {
  const hairs: string[] = [];
  for (let x = from; x <= to; x += every) {
    const lean = (x / every) % 2 < 1 ? 6 : -8;
    hairs.push(`M${x} 22 l${lean} ${-length}`, `M${x + every / 2} 54 l${-lean} ${length}`);
  }
  return hairs.join(' ');
}

/** How is a strand of this fibre drawn? Its shape tells it without its colour. */
export function drawStrand(fibre: 'sound' | 'rough' | 'gummy' | 'broken'): DrawnStrand {
  switch (fibre) {
    case 'sound':
      return {
        bodies: ['M12 22 C160 18 420 26 588 22 V54 C420 58 160 50 12 54 Z'],
        hairs: 'M12 33 C160 29 420 37 588 33 M12 43 C160 39 420 47 588 43',
      };
    case 'rough':
      return {
        bodies: ['M12 22 H588 V54 H12 Z'],
        hairs: standOff(24, 570, 26, 14),
      };
    case 'gummy':
      // Pulled, it has grown thin in the middle and hangs.
      return {
        bodies: [
          'M12 14 C180 14 230 48 300 52 C370 48 420 14 588 14 V46 C430 46 380 60 300 64 C220 60 170 46 12 46 Z',
        ],
        hairs: 'M20 30 C180 30 230 54 300 58 C370 54 420 30 580 30',
      };
    case 'broken':
      return {
        bodies: [
          'M12 22 H262 L248 28 L272 33 L250 39 L268 45 L246 54 H12 Z',
          'M588 22 H342 L356 29 L332 34 L354 40 L336 46 L358 54 H588 Z',
        ],
        hairs: `${standOff(24, 200, 30, 12)} M262 30 l22 -10 M268 42 l18 12 M338 32 l-20 -12 M342 48 l-18 10`,
      };
  }
}
