/** Keeps the last `most` things made, by key; the one used longest ago is let go first. */
export function kept<T>(most: number): (key: string, make: () => T) => T {
  const entries = new Map<string, T>();
  return (key, make) => {
    const known = entries.get(key);
    const value = known === undefined ? make() : known;
    entries.delete(key);
    entries.set(key, value);
    if (entries.size > most) {
      const oldest = entries.keys().next();
      if (oldest.done !== true) entries.delete(oldest.value);
    }
    return value;
  };
}
