"""What can go wrong with storage.

StorageError
├── DatabaseUnavailable   locked, full, gone or out of reach: nothing was saved, try again
│   └── DatabaseBusy      its turn did not come in time: nothing was begun
├── WrongDatabase         absent, or not of the revision this service works with
└── BackupError           a backup that cannot be written or read
"""


class StorageError(Exception):
    """Base of all of them."""


class DatabaseUnavailable(StorageError):  # noqa: N818 - a state of things, not a mistake
    """The database cannot be used at the moment; whatever was under way has not been saved."""


class DatabaseBusy(DatabaseUnavailable):
    """The transactions before this one took too long; nothing was begun."""


class WrongDatabase(StorageError):  # noqa: N818
    """The database is not one that this service can work with; the text says what to do."""


class BackupError(StorageError):
    """A backup cannot be written, or cannot be restored; the text says why."""
