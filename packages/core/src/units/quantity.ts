/** Nominal quantities: plain numbers in SI at run time, but the compiler keeps metres from pascals. */

declare const unit: unique symbol;

/** A number that carries its unit in its type only. */
export type In<Unit extends string> = number & { readonly [unit]: Unit };

export type Kelvin = In<"K">;
export type Pascal = In<"Pa">;
export type Metre = In<"m">;
export type SquareMetre = In<"m²">;
export type CubicMetre = In<"m³">;
export type KgPerCubicMetre = In<"kg/m³">;
export type Radian = In<"rad">;
/** Slide lift as a fraction of the full lift, 0 (closed) to 1 (full). */
export type Opening = In<"of full lift">;
