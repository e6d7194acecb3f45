import { onCleanup } from 'solid-js';

/** Every window of this tablet starts anew together, so that none shows the other edition. */
const CHANNEL = 'strandproof-edition';

/** The way to start every window anew, this one included. Lives as long as the reactive root that made it. */
export function createStartingAnew(): () => void {
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = () => location.reload();
  onCleanup(() => channel.close());
  return () => {
    channel.postMessage('anew');
    location.reload();
  };
}
