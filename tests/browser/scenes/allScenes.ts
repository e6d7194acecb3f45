import { scenesBeside } from './besideClient';
import { scenesOfClient } from './ofClient';
import type { Scene, SceneState, ScenesOf } from './scene';

/** A scene by its name: the screen, and in which state it is. */
export interface NamedScene {
  readonly name: string;
  readonly screen: string;
  readonly scene: Scene;
}

const states: readonly SceneState[] = ['empty', 'usual', 'full', 'error'];

const nameScenes = ([screen, scenes]: [string, ScenesOf]): readonly NamedScene[] => {
  const told = states.flatMap((state) => {
    const scene = scenes[state];
    return typeof scene === 'string' ? [] : [[state, scene] as const];
  });
  return [...told, ...Object.entries(scenes.also ?? {})].map(([state, scene]) => ({
    name: `${screen}-${state}`,
    screen,
    scene,
  }));
};

/** Every screen of the station in every state it can be met in. */
export const allScenes: readonly NamedScene[] = [
  ...Object.entries(scenesBeside),
  ...Object.entries(scenesOfClient),
].flatMap(nameScenes);
