import { type DemoDay, tellDemoDay } from '../../seeds/demoDay';

/**
 * What has happened in the invented salon by now? The only door from the station to the seeds, and reached by a late
 * import alone: a tablet on the wall of a real salon never loads it.
 */
export const tellInventedDay = (nowMs: number): DemoDay => tellDemoDay(nowMs);
