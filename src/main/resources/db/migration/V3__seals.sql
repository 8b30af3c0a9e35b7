-- Every row of ours carries a seal, the digest of its content: a byte that changed on the disk is
-- seen and never used.

ALTER TABLE morning ADD COLUMN journal VARCHAR(64) DEFAULT '' NOT NULL;
ALTER TABLE morning ADD COLUMN arrivals VARCHAR(64) DEFAULT '' NOT NULL;
ALTER TABLE morning ADD COLUMN seal VARCHAR(64) DEFAULT '' NOT NULL;

-- What is not sealed is made again from the originals.
DELETE FROM reading;
DELETE FROM stage;
ALTER TABLE reading ADD COLUMN seal VARCHAR(64) DEFAULT '' NOT NULL;
ALTER TABLE stage ADD COLUMN seal VARCHAR(64) DEFAULT '' NOT NULL;

DROP INDEX arrival_by_hash;
