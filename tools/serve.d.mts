export function serve(options: { readonly port: number; readonly folder?: string }): Promise<number>;
