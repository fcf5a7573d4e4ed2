import type { Database } from 'better-sqlite3';
import type { PlanSummary } from '../../contract.ts';

/** Saves with the same merge key within this time of each other are one change [ms]. */
export const mergeWithinMs = 4000;
/** Versions kept of a plan; older ones can no longer be undone. */
export const versionsKept = 300;

/** A plan's document as stored, with what undo and redo would do. */
export interface StoredPlan {
  readonly id: string;
  readonly document: string;
  readonly revision: number;
  readonly undoWords: string | null;
  readonly redoWords: string | null;
}

/** What the store needs to know of a plan beside its text. */
export interface PlanText {
  readonly document: string;
  readonly schemaVersion: number;
  readonly name: string;
  readonly siteName: string;
  readonly places: number;
}

interface VersionRow {
  readonly number: number;
  readonly words: string;
  readonly merge_key: string | null;
  readonly saved_ms: number;
  readonly document: string;
}

/** Plans and their versions. An unknown or put-away id answers null. */
export function planTable(database: Database, now: () => number) {
  const summaries = database.prepare<[], PlanSummary>(
    `SELECT id, name, site_name AS siteName, place_count AS places, changed_ms AS changedMs
     FROM plan WHERE archived_ms IS NULL ORDER BY changed_ms DESC, id`,
  );
  const shown = database.prepare<[string], { revision: number; shown_version: number }>(
    'SELECT revision, shown_version FROM plan WHERE id = ? AND archived_ms IS NULL',
  );
  const version = database.prepare<[string, number], VersionRow>(
    'SELECT number, words, merge_key, saved_ms, document FROM plan_version WHERE plan_id = ? AND number = ?',
  );
  const insertPlan = database.prepare(
    `INSERT INTO plan (id, name, site_name, place_count, shown_version, revision, changed_ms)
     VALUES (@id, @name, @siteName, @places, 1, 1, @nowMs)`,
  );
  const insertVersion = database.prepare(
    `INSERT INTO plan_version (plan_id, number, words, merge_key, saved_ms, schema_version, document)
     VALUES (@id, @number, @words, @mergeKey, @nowMs, @schemaVersion, @document)`,
  );
  const replaceVersion = database.prepare(
    `UPDATE plan_version SET words = @words, saved_ms = @nowMs, schema_version = @schemaVersion, document = @document
     WHERE plan_id = @id AND number = @number`,
  );
  const dropAfter = database.prepare('DELETE FROM plan_version WHERE plan_id = ? AND number > ?');
  const dropUpTo = database.prepare('DELETE FROM plan_version WHERE plan_id = ? AND number <= ?');
  const show = database.prepare(
    `UPDATE plan SET shown_version = @number, revision = revision + 1, changed_ms = @nowMs,
       name = @name, site_name = @siteName, place_count = @places WHERE id = @id`,
  );
  const archive = database.prepare('UPDATE plan SET archived_ms = ? WHERE id = ? AND archived_ms IS NULL');
  const restore = database.prepare(
    'UPDATE plan SET archived_ms = NULL WHERE id = ? AND archived_ms IS NOT NULL',
  );

  function read(id: string): StoredPlan | null {
    const plan = shown.get(id);
    const row = plan && version.get(id, plan.shown_version);
    if (!plan || !row) return null;
    const before = version.get(id, row.number - 1);
    const after = version.get(id, row.number + 1);
    return {
      id,
      document: row.document,
      revision: plan.revision,
      undoWords: before ? row.words : null,
      redoWords: after?.words ?? null,
    };
  }

  function create(id: string, plan: PlanText, words: string): void {
    const nowMs = now();
    insertPlan.run({ ...plan, id, nowMs });
    insertVersion.run({ ...plan, id, number: 1, words, mergeKey: null, nowMs });
  }

  /** True where the change joins the one before: same key, just now, and nothing undone since. */
  function joins(id: string, last: VersionRow, mergeKey: string | null, nowMs: number): boolean {
    if (mergeKey === null || last.merge_key !== mergeKey) return false;
    return nowMs - last.saved_ms <= mergeWithinMs && version.get(id, last.number + 1) === undefined;
  }

  function save(id: string, plan: PlanText, words: string, mergeKey: string | null): StoredPlan | null {
    const current = shown.get(id);
    const last = current && version.get(id, current.shown_version);
    if (!last) return null;
    if (last.document === plan.document) return read(id);
    const nowMs = now();
    const joined = joins(id, last, mergeKey, nowMs);
    const number = joined ? last.number : last.number + 1;
    const row = { ...plan, id, number, words, mergeKey, nowMs };
    if (joined) replaceVersion.run(row);
    else {
      dropAfter.run(id, last.number);
      insertVersion.run(row);
      dropUpTo.run(id, number - versionsKept);
    }
    show.run(row);
    return read(id);
  }

  /** Moves the shown version by `step`; the plan as it is where there is no such version. */
  function move(id: string, step: -1 | 1, describe: (document: string) => PlanText): StoredPlan | null {
    const current = shown.get(id);
    if (!current) return null;
    const row = version.get(id, current.shown_version + step);
    if (row) show.run({ ...describe(row.document), id, number: row.number, nowMs: now() });
    return read(id);
  }

  return {
    list: () => summaries.all(),
    read,
    // Immediate: a deferred one that reads before it writes fails where another window wrote in between.
    create: database.transaction(create).immediate,
    save: database.transaction(save).immediate,
    move: database.transaction(move).immediate,
    archive: (id: string) => archive.run(now(), id).changes === 1,
    restore: (id: string) => restore.run(id).changes === 1,
  };
}

export type PlanTable = ReturnType<typeof planTable>;
