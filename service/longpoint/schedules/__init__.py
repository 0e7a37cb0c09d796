"""House schedules in a database: every write is a revision, and no reading is ever lost."""
