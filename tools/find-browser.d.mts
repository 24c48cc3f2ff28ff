export function findBrowser(): Promise<{
  readonly executablePath: string;
  readonly args: string[];
  readonly env: NodeJS.ProcessEnv;
}>;
