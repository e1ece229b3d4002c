import type * as library from "darkroom-kinetics";

export function sweep(of: typeof library): Readonly<Record<string, number>>;
