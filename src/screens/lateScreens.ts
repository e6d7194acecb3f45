import { late } from '../parts/late';

/** What nobody sees first: each comes with its own script. */
export const BenchTrials = late(() => import('./practice/bench/BenchTrials').then((m) => m.BenchTrials));
export const ClientInView = late(() => import('./ClientInView').then((m) => m.ClientInView));
export const Day = late(() => import('./day/Day').then((m) => m.Day));
export const DebriefPage = late(() => import('./practice/DebriefPage').then((m) => m.DebriefPage));
export const Diagnosis = late(() => import('./diagnosis/Diagnosis').then((m) => m.Diagnosis));
export const Lessons = late(() => import('./practice/Lessons').then((m) => m.Lessons));
export const PressPage = late(() => import('./practice/press/PressPage').then((m) => m.PressPage));
export const RecordsKept = late(() => import('./kept/RecordsKept').then((m) => m.RecordsKept));
export const SettingsScreen = late(() => import('./settings/SettingsScreen').then((m) => m.SettingsScreen));
export const SkinTests = late(() => import('./skinTest/SkinTests').then((m) => m.SkinTests));
export const Start = late(() => import('./start/Start').then((m) => m.Start));
export const Trainer = late(() => import('./practice/Trainer').then((m) => m.Trainer));
export const WhatTaught = late(() => import('./taught/WhatTaught').then((m) => m.WhatTaught));
export const WhoIsIt = late(() => import('./bar/WhoIsIt').then((m) => m.WhoIsIt));
