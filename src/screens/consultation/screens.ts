import type { Component } from 'solid-js';
import { late } from '../../parts/late';
import type { ScreenName } from '../screenOf';
import type { StepProps } from '../stepProps';

/** The screen of each state of one consultation that is not closed yet; each comes with its own script. */
export const screens: Readonly<Record<ScreenName, Component<StepProps>>> = {
  client: late(() => import('../ask/Client').then((m) => m.Client)),
  hotTools: late(() => import('../ask/HotTools').then((m) => m.HotTools)),
  feelHair: late(() => import('../ask/FeelHair').then((m) => m.FeelHair)),
  heatSpray: late(() => import('../ask/HeatSpray').then((m) => m.HeatSpray)),
  preparing: late(() => import('../strandTest/Preparing').then((m) => m.Preparing)),
  processing: late(() => import('../strandTest/Processing').then((m) => m.Processing)),
  outcome: late(() => import('../strandTest/Outcome').then((m) => m.Outcome)),
  decision: late(() => import('../decision/DecisionScreen').then((m) => m.DecisionScreen)),
  mix: late(() => import('../mix/MixScreen').then((m) => m.MixScreen)),
  colourOn: late(() => import('../colourOn/ColourOn').then((m) => m.ColourOn)),
  finish: late(() => import('../finish/Finish').then((m) => m.Finish)),
  stopped: late(() => import('../stopped/Stopped').then((m) => m.Stopped)),
  parked: late(() => import('../parked/Parked').then((m) => m.Parked)),
  reaction: late(() => import('../reaction/Reaction').then((m) => m.Reaction)),
  ended: late(() => import('../ended/NotWritten').then((m) => m.NotWritten)),
};
