/** A map that forgets what was used longest ago once it holds `most` entries. */
export interface BoundedMap<T> {
  /** The entry of `key`, made and kept where it is not there. */
  get(key: string, make: () => T): T;
  readonly size: number;
}

export function boundedMap<T>(most: number): BoundedMap<T> {
  const entries = new Map<string, T>();
  return {
    get(key, make) {
      const known = entries.get(key);
      const value = known ?? make();
      entries.delete(key);
      entries.set(key, value);
      if (entries.size > most) {
        const oldest = entries.keys().next();
        if (oldest.done !== true) entries.delete(oldest.value);
      }
      return value;
    },
    get size() {
      return entries.size;
    },
  };
}
