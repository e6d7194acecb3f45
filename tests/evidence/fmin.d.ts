/** The one function of fmin 0.0.4 that is checked against. Read as a module, its build hands itself to the global object. */
declare const fmin: {
  /** Nonlinear conjugate gradients: `f` answers the height at `x` and fills in the slopes. Ends at slopes of 1e-5. */
  conjugateGradient(
    f: (x: readonly number[], slopes: number[]) => number,
    initial: readonly number[],
    params?: { readonly maxIterations?: number },
  ): { readonly x: readonly number[]; readonly fx: number };
};

/** The package ships no types. */
declare module 'fmin';
