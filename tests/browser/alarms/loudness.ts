import type { Page } from 'playwright-core';

/** Lets the test hear how loud the tablet is at a moment, by its real audio; before the page is opened. */
export async function hearLoudness(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const ears: AnalyserNode[] = [];
    const { connect } = AudioNode.prototype as { connect: (this: AudioNode, ...to: unknown[]) => unknown };
    const hear = function (this: AudioNode, ...to: unknown[]) {
      if (to[0] === this.context.destination) {
        const ear = this.context.createAnalyser();
        ear.fftSize = 1024;
        ears.push(ear);
        connect.call(this, ear);
      }
      return connect.apply(this, to);
    };
    Object.assign(AudioNode.prototype, { connect: hear });
    const readLoudness = () =>
      Math.max(
        0,
        ...ears.map((ear) => {
          const wave = new Float32Array(ear.fftSize);
          ear.getFloatTimeDomainData(wave);
          return Math.max(...wave.map(Math.abs));
        }),
      );
    Object.assign(window, { readLoudness });
  });
  return () => page.evaluate(() => (window as unknown as { readLoudness: () => number }).readLoudness());
}
