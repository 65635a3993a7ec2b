"""The rule book: one rule a file, each with its reason, its source and two examples."""
