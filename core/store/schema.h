#pragma once
// The tables of the ledger. Other rooms (projections, sync) add tables of their own beside these.

namespace weavelog {

/// Says whose file it is, in SQLite's header: "WVLG".
inline constexpr int kApplicationId = 0x57564c47;
/// Raised with every change of the tables below; a database of a higher number is refused.
inline constexpr int kSchemaVersion = 5;

inline constexpr const char* kSchema = R"sql(
-- Small state: our own author, the clock, versions of projections, and what other rooms remember.
CREATE TABLE meta(key TEXT PRIMARY KEY, value BLOB NOT NULL) WITHOUT ROWID;
-- Everyone whose entries we hold, once.
CREATE TABLE author(n INTEGER PRIMARY KEY, id BLOB NOT NULL UNIQUE, key BLOB NOT NULL, incarnation INTEGER NOT NULL,
                    device TEXT NOT NULL, wrong_clock INTEGER NOT NULL DEFAULT 0);
CREATE TABLE book(n INTEGER PRIMARY KEY, id BLOB NOT NULL UNIQUE, kind INTEGER NOT NULL,
                  forgotten INTEGER NOT NULL DEFAULT 0);
-- Layer one: the bytes of every entry in the order in which they were applied here, which respects causality. A position is
-- never given twice: AUTOINCREMENT would keep a page for that in every transaction, so deletions note what they take.
CREATE TABLE entry(position INTEGER PRIMARY KEY, book INTEGER NOT NULL, author INTEGER NOT NULL,
                   seq INTEGER NOT NULL, source INTEGER NOT NULL, body BLOB NOT NULL);
CREATE TABLE gone(one INTEGER PRIMARY KEY CHECK(one=1), position INTEGER NOT NULL, deletions INTEGER NOT NULL);
INSERT INTO gone VALUES(1, 0, 0);
-- Every entry in its chain, with the chain's hash up to it. The last of a chain is its head: a row of its own for that would be
-- one more page in every transaction.
CREATE TABLE link(book INTEGER NOT NULL, author INTEGER NOT NULL, seq INTEGER NOT NULL, position INTEGER NOT NULL,
                  hash BLOB NOT NULL, PRIMARY KEY(book, author, seq)) WITHOUT ROWID;
CREATE TRIGGER entry_gone AFTER DELETE ON entry BEGIN
  UPDATE gone SET position=max(position, OLD.position), deletions=deletions+1;
  DELETE FROM link WHERE book=OLD.book AND author=OLD.author AND seq=OLD.seq;
END;
-- Every chain, and the newest seal of those that are not ours. `tail` holds the digests of the bodies between the head and
-- the sealed entry, 32 bytes each.
CREATE TABLE chain(book INTEGER NOT NULL, author INTEGER NOT NULL, sealed INTEGER NOT NULL DEFAULT 0, signature BLOB, tail BLOB,
                   PRIMARY KEY(book, author)) WITHOUT ROWID;
-- Seals at every so many entries of a chain (kSealEvery), so that what proves a part of a long chain stays short.
CREATE TABLE waypoint(book INTEGER NOT NULL, author INTEGER NOT NULL, seq INTEGER NOT NULL, signature BLOB NOT NULL,
                      PRIMARY KEY(book, author, seq)) WITHOUT ROWID;
CREATE TRIGGER chain_gone AFTER DELETE ON chain BEGIN
  DELETE FROM waypoint WHERE book=OLD.book AND author=OLD.author;
END;
-- Links and chains, and all that follows, may be a little behind the entries: `meta` says up to where they are written (kRowsKey).
-- Layer two: one row per entity with its cells packed; `questions` counts its open ones.
CREATE TABLE entity(book INTEGER NOT NULL, id BLOB NOT NULL, kind INTEGER NOT NULL, questions INTEGER NOT NULL,
                    state BLOB NOT NULL, PRIMARY KEY(book, id)) WITHOUT ROWID;
CREATE TABLE question(book INTEGER NOT NULL, entity BLOB NOT NULL, tag INTEGER NOT NULL,
                      PRIMARY KEY(book, entity, tag)) WITHOUT ROWID;
-- What was refused, with the reason.
CREATE TABLE quarantine(n INTEGER PRIMARY KEY AUTOINCREMENT, book BLOB NOT NULL, author BLOB NOT NULL, seq INTEGER NOT NULL,
                        body BLOB NOT NULL, reason TEXT NOT NULL, at INTEGER NOT NULL, UNIQUE(book, author, seq, body));
)sql";

/// From version 1, which kept a digest of each book's heads, and let SQLite number the entries.
inline constexpr const char* kFromVersion1 = R"sql(
CREATE TABLE gone(one INTEGER PRIMARY KEY CHECK(one=1), position INTEGER NOT NULL, deletions INTEGER NOT NULL);
INSERT INTO gone VALUES(1, coalesce((SELECT seq FROM sqlite_sequence WHERE name='entry'), 0), 0);
ALTER TABLE entry RENAME TO entry_1;
DROP INDEX entry_by_chain;
CREATE TABLE entry(position INTEGER PRIMARY KEY, book INTEGER NOT NULL, author INTEGER NOT NULL,
                   seq INTEGER NOT NULL, source INTEGER NOT NULL, body BLOB NOT NULL);
INSERT INTO entry SELECT position, book, author, seq, source, body FROM entry_1 ORDER BY position;
DROP TABLE entry_1;
CREATE UNIQUE INDEX entry_by_chain ON entry(book, author, seq);
CREATE TRIGGER entry_gone AFTER DELETE ON entry BEGIN
  UPDATE gone SET position=max(position, OLD.position), deletions=deletions+1;
END;
CREATE TABLE waypoint(book INTEGER NOT NULL, author INTEGER NOT NULL, seq INTEGER NOT NULL, signature BLOB NOT NULL,
                      PRIMARY KEY(book, author, seq)) WITHOUT ROWID;
CREATE TRIGGER chain_gone AFTER DELETE ON chain BEGIN
  DELETE FROM waypoint WHERE book=OLD.book AND author=OLD.author;
END;
ALTER TABLE book DROP COLUMN heads;
)sql";

/// From version 2, whose entity rows spelt the stamp of every value: they are made anew from the entries (kRebuildKey).
inline constexpr const char* kFromVersion2 = "INSERT OR REPLACE INTO meta VALUES('rebuild', x'01')";
/// In `meta`: layers two and three are to be made anew at the next start.
inline constexpr const char* kRebuildKey = "rebuild";

/// From here on every entry has a link with the hash of its chain.
inline constexpr int kVersionWithLinks = 4;
/// From version 3, which kept the hash of each chain's head only: those of the links are worked out at the next start (kRelinkKey).
inline constexpr const char* kFromVersion3 = R"sql(
CREATE TABLE link(book INTEGER NOT NULL, author INTEGER NOT NULL, seq INTEGER NOT NULL, position INTEGER NOT NULL,
                  hash BLOB NOT NULL, PRIMARY KEY(book, author, seq)) WITHOUT ROWID;
INSERT INTO link SELECT book, author, seq, position, x'' FROM entry ORDER BY book, author, seq;
DROP INDEX entry_by_chain;
DROP TRIGGER entry_gone;
CREATE TRIGGER entry_gone AFTER DELETE ON entry BEGIN
  UPDATE gone SET position=max(position, OLD.position), deletions=deletions+1;
  DELETE FROM link WHERE book=OLD.book AND author=OLD.author AND seq=OLD.seq;
END;
ALTER TABLE chain DROP COLUMN seq;
ALTER TABLE chain DROP COLUMN hash;
INSERT OR REPLACE INTO meta VALUES('relink', x'01');
)sql";
/// In `meta`: the hashes of the links are to be worked out.
inline constexpr const char* kRelinkKey = "relink";

// Version 4 differs in nothing but that in it no row was ever behind its entry, on which programs of its time rely.
/// In `meta`: the position up to which everything that follows from the entries is written, as a number. Without it: all is.
inline constexpr const char* kRowsKey = "rows";

/// Made where it is missing: databases of the same number have it or not.
inline constexpr const char* kCareSchema = R"sql(
-- The last link of every chain.
CREATE VIEW IF NOT EXISTS head AS SELECT c.book, c.author, l.seq, l.hash FROM chain c JOIN link l ON l.book=c.book AND l.author=c.author
  AND l.seq=(SELECT max(seq) FROM link WHERE book=c.book AND author=c.author);
-- Books that were forgotten: what stays of each (core/log/stub.h), in the order in which it was heard here. `heard_from` is the
-- key of the device that handed it over, zeros if it was ordered here.
CREATE TABLE IF NOT EXISTS stub(n INTEGER PRIMARY KEY AUTOINCREMENT, book BLOB NOT NULL UNIQUE, kind INTEGER NOT NULL,
                                at INTEGER NOT NULL, key BLOB NOT NULL, device TEXT NOT NULL, signature BLOB NOT NULL,
                                heard INTEGER NOT NULL, heard_from BLOB NOT NULL);
-- Chains of which two branches were met, from `seq` on; `own` counts how often we said again what one of our own branches held.
CREATE TABLE IF NOT EXISTS fork(book INTEGER NOT NULL, author INTEGER NOT NULL, seq INTEGER NOT NULL, at INTEGER NOT NULL,
                                own INTEGER NOT NULL DEFAULT 0, PRIMARY KEY(book, author)) WITHOUT ROWID;
-- Numbers of entries that others replace and that are not here: there may be another branch of that chain somewhere. What comes under such a
-- number goes in before what replaces it.
CREATE TABLE IF NOT EXISTS awaited(book INTEGER NOT NULL, author BLOB NOT NULL, seq INTEGER NOT NULL,
                                   PRIMARY KEY(book, author, seq)) WITHOUT ROWID;
)sql";

}  // namespace weavelog
