/**
 * Asks the browser not to clear what is kept when room runs short. True: it will not. False: it may, so that a copy elsewhere
 * matters more; browsers that forget sites left alone for a week do so unless the planner is installed.
 */
export async function askPersistence(
  storage: Pick<StorageManager, 'persist' | 'persisted'> | undefined,
): Promise<boolean> {
  if (storage === undefined) return false;
  try {
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return false;
  }
}
