"""Plan a kitchen hood's exhaust duct before any hole is cut."""

__all__ = ["__version__"]

__version__ = "0.1.0"
