import SqliteDatabase from 'better-sqlite3';

/** The store cannot be used; the message is plain words for the user and names the file. */
export class StoreFailure extends Error {
  override readonly name = 'StoreFailure';
}

type SqliteError = InstanceType<typeof SqliteDatabase.SqliteError>;

export function isStoreError(error: unknown): error is StoreFailure | SqliteError {
  return error instanceof StoreFailure || error instanceof SqliteDatabase.SqliteError;
}

/** Plain words for what SQLite reports; result codes at https://sqlite.org/rescode.html. */
export function storeMessage(error: StoreFailure | SqliteError): string {
  if (error instanceof StoreFailure) return error.message;
  const { code } = error;
  if (code.startsWith('SQLITE_FULL'))
    return 'The disk is full: the change was not kept. Make room and try again.';
  if (code.startsWith('SQLITE_BUSY'))
    return 'Another Winterbench is writing just now: the change was not kept. Try again.';
  if (code.startsWith('SQLITE_READONLY'))
    return 'The data folder cannot be written to: the change was not kept.';
  return `The change was not kept (${error.message}).`;
}
