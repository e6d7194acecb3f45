/**
 * The sentences of a lesson in Spanish, each under the English one that it stands for. By sentence and not by place: one that
 * is changed in English is shown in English until its twin is written, and never beside a twin that says something else.
 */
export type Sentences = Readonly<Record<string, string>>;
