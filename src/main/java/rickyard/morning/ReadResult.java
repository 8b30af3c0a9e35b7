package rickyard.morning;

import java.util.Optional;
import rickyard.intake.ReadFile;

/** What reading one file gave; empty where this reader had read the same bytes before. */
record ReadResult(int seq, String sha256, Optional<ReadFile> file) {}
