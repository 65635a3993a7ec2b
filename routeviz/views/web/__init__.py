"""The page's own source: markup, style, script, and the bundle that is built from the script."""
