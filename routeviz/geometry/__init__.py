"""Shape mathematics that knows no kitchens."""
