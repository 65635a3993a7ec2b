"""``python -m routeviz``."""

from routeviz.cli import main

raise SystemExit(main())
