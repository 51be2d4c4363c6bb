/** The few functions of the psychrometrics package used as a second oracle; it ships no types. */
declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Pa from °C. Hyland and Wexler: over ice below freezing. */
    GetSatVapPres(celsius: number): number;
    /** kg/kg from °C, °C, Pa. */
    GetHumRatioFromTWetBulb(celsius: number, wetBulb: number, pascal: number): number;
    GetHumRatioFromTDewPoint(dewPoint: number, pascal: number): number;
    GetHumRatioFromRelHum(celsius: number, fraction: number, pascal: number): number;
    /** kg/m³ from °C, kg/kg, Pa. An ideal gas mixture. */
    GetMoistAirDensity(celsius: number, humidityRatio: number, pascal: number): number;
    /** Pa from m. */
    GetStandardAtmPressure(metre: number): number;
  }
  const psychrolib: Psychrolib;
  export = psychrolib;
}
