"""Build ``bundle.js`` from ``src``: ``python -m routeviz.views.web.build`` (needs Node; users do not).

The packages are installed in a temporary folder. The bundle's last line names the digest of what it was built from, so
that a test can tell a stale bundle without Node.
"""

from __future__ import annotations

import hashlib
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

__all__ = ["HERE", "build", "digest"]

HERE = Path(__file__).resolve().parent
MARK = "// built from "


def digest() -> str:
    """Give the digest of everything that the bundle is built from."""
    total = hashlib.sha256()
    for file in [HERE / "package.json", *sorted((HERE / "src").glob("*.js"))]:
        total.update(file.name.encode() + b"\0" + file.read_bytes() + b"\0")
    return total.hexdigest()[:16]


def build() -> Path:
    """Install, bundle, and write ``bundle.js``.

    Raises
    ------
    subprocess.CalledProcessError
        If the install or the bundler fails; its own words are on the terminal.
    """
    target = HERE / "bundle.js"
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        shutil.copy(HERE / "package.json", work)
        shutil.copytree(HERE / "src", work / "src")
        subprocess.run(["npm", "install", "--no-audit", "--no-fund", "--silent"], cwd=work, check=True)
        made = work / "bundle.js"
        subprocess.run(
            [work / "node_modules/.bin/esbuild", "src/main.js", "--bundle", "--minify", "--format=iife", "--target=es2020",
             "--charset=utf8", "--legal-comments=inline", "--log-level=warning", f"--outfile={made}"],
            cwd=work, check=True,
        )  # fmt: skip
        target.write_text(made.read_text(encoding="utf-8").rstrip() + f"\n{MARK}{digest()}\n", encoding="utf-8")
    return target


if __name__ == "__main__":
    sys.stdout.write(f"{build()} {(HERE / 'bundle.js').stat().st_size // 1024} KB\n")
