import type { Component } from 'solid-js';
import { Client } from '../ask/Client';
import { FeelHair } from '../ask/FeelHair';
import { HeatSpray } from '../ask/HeatSpray';
import { HotTools } from '../ask/HotTools';
import { ColourOn } from '../colourOn/ColourOn';
import { DecisionScreen } from '../decision/DecisionScreen';
import { NotWritten } from '../ended/NotWritten';
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

/** The screen of each state of one consultation that is not closed yet. */
export const screens: Readonly<Record<ScreenName, Component<StepProps>>> = {
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
  ended: NotWritten,
};
