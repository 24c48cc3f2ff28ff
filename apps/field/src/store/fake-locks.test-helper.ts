/** Web Locks as far as the store uses them: shared ones side by side, exclusive ones only if free. */
export function fakeLocks() {
  const held: string[] = [];
  type Work = (lock: object | null) => unknown;
  return {
    held: () => [...held],
    request: async (name: string, options: { mode?: string; ifAvailable?: boolean }, work: Work) => {
      if (options.ifAvailable && held.includes(name)) return work(null);
      held.push(name);
      await work({});
      held.splice(held.indexOf(name), 1);
    },
  };
}
