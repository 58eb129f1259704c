"""A lock on an open file that the system itself lets go when the process ends, however it ends."""

import errno
import os
import sys

_HELD_ELSEWHERE = frozenset({errno.EACCES, errno.EAGAIN, errno.EWOULDBLOCK, errno.EDEADLK})


def hold(handle: int) -> bool:
    """Lock an open file for this handle alone; False if another handle, here or elsewhere, holds it.

    Raises
    ------
    OSError
        If the file system knows no locks.
    """
    try:
        _lock(handle)
    except OSError as error:
        if error.errno in _HELD_ELSEWHERE:
            return False
        raise
    return True


if sys.platform == "win32":
    import msvcrt

    _FAR = 1 << 20  # beyond all that is written: on Windows nobody else may read a locked byte

    def _lock(handle: int) -> None:
        os.lseek(handle, _FAR, os.SEEK_SET)
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        os.lseek(handle, 0, os.SEEK_SET)

else:
    import fcntl

    def _lock(handle: int) -> None:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
