import type { Component } from 'solid-js';
import { Client } from '../ask/Client';
import { FeelHair } from '../ask/FeelHair';
import { HeatSpray } from '../ask/HeatSpray';
import { HotTools } from '../ask/HotTools';
import { ColourOn } from '../colourOn/ColourOn';
import { DecisionScreen } from '../decision/DecisionScreen';
import { Finish } from '../finish/Finish';
import { MixScreen } from '../mix/MixScreen';
import { Parked } from '../parked/Parked';
import { Reaction } from '../reaction/Reaction';
import type { ScreenName } from '../screenOf';
import type { StepProps } from '../stepProps';
import { Stopped } from '../stopped/Stopped';
import { Outcome } from '../strandTest/Outcome';
import { Preparing } from '../strandTest/Preparing';
import { Processing } from '../strandTest/Processing';

/** The screen of each state of one open consultation. */
export const screens: Readonly<Record<Exclude<ScreenName, 'ended'>, Component<StepProps>>> = {
  client: Client,
  hotTools: HotTools,
  feelHair: FeelHair,
  heatSpray: HeatSpray,
  preparing: Preparing,
  processing: Processing,
  outcome: Outcome,
  decision: DecisionScreen,
  mix: MixScreen,
  colourOn: ColourOn,
  finish: Finish,
  stopped: Stopped,
  parked: Parked,
  reaction: Reaction,
};
