/** The few functions of psychrolib 1.1.1 that are checked against; the package ships no types. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Pa at so many metres. */
    GetStandardAtmPressure(metres: number): number;
    /** Pa over water at so many °C. */
    GetSatVapPres(celsius: number): number;
  };
  export default psychrolib;
}
