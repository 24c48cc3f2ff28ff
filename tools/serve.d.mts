export function serve(options: {
  readonly port: number;
  readonly folder?: string;
}): Promise<{ readonly port: number; close(): void }>;
