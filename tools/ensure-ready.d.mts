export const root: string;
export function run(
  command: string,
  args: readonly string[],
  why: string,
  env?: Record<string, string>,
): void;
export function ensureInstalled(): void;
export function ensureApp(): void;
export function ensureCli(): void;
