import type { Component } from 'solid-js';
import { Client } from '../ask/Client';
import { FeelHair } from '../ask/FeelHair';
import { HeatSpray } from '../ask/HeatSpray';
import { HotTools } from '../ask/HotTools';
import { DecisionScreen } from '../decision/DecisionScreen';
import { Parked } from '../parked/Parked';
import type { ScreenName } from '../screenOf';
import type { StepProps } from '../stepProps';
import { Stopped } from '../stopped/Stopped';
import { Outcome } from '../strandTest/Outcome';
import { Preparing } from '../strandTest/Preparing';
import { Processing } from '../strandTest/Processing';

/** The screen of each state of one open consultation. */
export const screens: Readonly<Partial<Record<Exclude<ScreenName, 'ended'>, Component<StepProps>>>> = {
  client: Client,
  hotTools: HotTools,
  feelHair: FeelHair,
  heatSpray: HeatSpray,
  preparing: Preparing,
  processing: Processing,
  outcome: Outcome,
  decision: DecisionScreen,
  stopped: Stopped,
  parked: Parked,
};
