import type { Component, JSX } from 'solid-js';

/** The page on which something about a skin test stands: within a consultation, or in the list of them all. */
export type Frame = Component<{
  readonly title: string;
  readonly children: JSX.Element;
  readonly actions: JSX.Element;
}>;
