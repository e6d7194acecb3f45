import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';

/** How much room is there? px of the page, wide and high, as it changes; nothing before it is drawn. */
export function createRoom(find: () => Element | undefined): Accessor<{ wide: number; high: number }> {
  const [room, setRoom] = createSignal({ wide: 0, high: 0 });
  onMount(() => {
    const place = find();
    if (place === undefined) return;
    const look = () => setRoom({ wide: place.clientWidth, high: place.clientHeight });
    const watcher = new ResizeObserver(look);
    watcher.observe(place);
    look();
    onCleanup(() => watcher.disconnect());
  });
  return room;
}
