# Makes or reuses .venv from a hashed lock. Sourced by run and test; needs $root.

find_python() {
    for candidate in ${PYTHON:-} python3 python3.13 python3.12 python3.11 python; do
        if "$candidate" -c 'import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; then
            echo "$candidate"
            return
        fi
    done
    echo "Python 3.11 or newer with venv is needed and was not found; set PYTHON to one." >&2
    exit 1
}

# prepare LOCK [ALSO_SERVES]: installs LOCK unless it, or a lock that holds all of it, is what .venv has.
prepare() {
    python=$(find_python)
    want=$("$python" -c 'import hashlib, pathlib, sys; print(hashlib.sha256(pathlib.Path(sys.argv[1]).read_bytes()).hexdigest())' "$root/deploy/$1")
    for lock in "$1" ${2:-}; do
        have=$(cat "$root/.venv/$lock.installed" 2>/dev/null || true)
        need=$("$python" -c 'import hashlib, pathlib, sys; print(hashlib.sha256(pathlib.Path(sys.argv[1]).read_bytes()).hexdigest())' "$root/deploy/$lock")
        if [ "$have" = "$need" ] && "$root/.venv/bin/python" -c '' >/dev/null 2>&1; then
            return
        fi
    done
    echo "Making .venv from deploy/$1 (first start only)" >&2
    [ -x "$root/.venv/bin/python" ] && "$root/.venv/bin/python" -c '' >/dev/null 2>&1 || "$python" -m venv --clear "$root/.venv"
    "$root/.venv/bin/python" -m pip install --quiet --disable-pip-version-check --no-deps --require-hashes \
        -r "$root/deploy/$1"
    "$root/.venv/bin/python" -c '
import pathlib, sys, sysconfig
site = pathlib.Path(sysconfig.get_paths()["purelib"])
root = pathlib.Path(sys.argv[1])
(site / "longpoint.pth").write_text(f"{root}/service\n{root}/sdk/src\n")' "$root"
    rm -f "$root"/.venv/*.installed
    echo "$want" > "$root/.venv/$1.installed"
}
