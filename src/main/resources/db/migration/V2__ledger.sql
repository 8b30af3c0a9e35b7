-- What Rickyard remembers. The database is an index: originals and journal are the truth.

CREATE TABLE morning (
  number INTEGER PRIMARY KEY,
  as_of DATE NOT NULL,
  identity VARCHAR(64) NOT NULL,
  content VARCHAR(64) NOT NULL,
  state VARCHAR(10) NOT NULL
);

CREATE TABLE arrival (
  morning INTEGER NOT NULL,
  seq INTEGER NOT NULL,
  path VARCHAR(2000) NOT NULL,
  sha256 VARCHAR(64) NOT NULL,
  bytes BIGINT NOT NULL,
  problem_code VARCHAR(60) NOT NULL,
  problem VARCHAR(1000) NOT NULL,
  CONSTRAINT arrival_pk PRIMARY KEY (morning, seq)
);

CREATE INDEX arrival_by_hash ON arrival (sha256);

-- Reading is a function of (bytes, reader): a cache that never changes an outcome.
CREATE TABLE reading (
  sha256 VARCHAR(64) NOT NULL,
  reader VARCHAR(64) NOT NULL,
  document BYTEA NOT NULL,
  CONSTRAINT reading_pk PRIMARY KEY (sha256, reader)
);

-- Results of the steps of one morning, one compressed document each.
CREATE TABLE stage (
  morning INTEGER NOT NULL,
  name VARCHAR(200) NOT NULL,
  document BYTEA NOT NULL,
  CONSTRAINT stage_pk PRIMARY KEY (morning, name)
);
