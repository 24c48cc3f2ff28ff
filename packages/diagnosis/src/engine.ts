import { activations, type Network } from "./network.ts";

/** How much each head overstates itself; scores are divided by it. */
export interface Calibration {
  readonly single: number;
  readonly pair: number;
  readonly two: number;
}

/** The trained network with room to run it. */
export interface Engine {
  readonly network: Network;
  readonly calibration: Calibration;
  readonly room: ReturnType<typeof activations>;
}

export const engineOf = (network: Network, calibration: Calibration): Engine => ({
  network,
  calibration,
  room: activations(),
});

let loaded: Promise<Engine> | undefined;

/** The shipped engine. Its weights are a chunk of their own, fetched when first asked for. */
export function loadEngine(): Promise<Engine> {
  loaded ??= import("./internal/weights.ts").then((module) => engineOf(module.network(), module.calibration));
  return loaded;
}
