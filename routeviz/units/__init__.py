"""Tape-measure text and quantities to floats (`reading`) and back (`writing`).

Inside routeviz every length is a float in inches (field names end in ``_in``): sixteenths and sixty-fourths
are exact in binary, and a metric length comes back exactly when printed in millimetres. The search works on
whole ticks of 1/8128 in = 1/320 mm, so that 1/64 in (127 ticks) and 0.1 mm (32 ticks) are both whole numbers.
"""

from __future__ import annotations

from routeviz.units.reading import (
    LENGTH_EXAMPLES,
    MM_PER_IN,
    TICKS_PER_IN,
    comma_remedy,
    parse_angle,
    parse_length,
    parse_pitch,
    parse_quantity,
    ticks,
)
from routeviz.units.writing import (
    down_in,
    drill_text,
    elbows_text,
    feet_text,
    flow_text,
    gain_text,
    inch_text,
    length_text,
    limit_text,
    loss_text,
    mm_text,
    quantity_text,
    sheet_text,
    spare_text,
    split_text,
    told,
)

__all__ = [
    "LENGTH_EXAMPLES",
    "MM_PER_IN",
    "TICKS_PER_IN",
    "comma_remedy",
    "down_in",
    "drill_text",
    "elbows_text",
    "feet_text",
    "flow_text",
    "gain_text",
    "inch_text",
    "length_text",
    "limit_text",
    "loss_text",
    "mm_text",
    "parse_angle",
    "parse_length",
    "parse_pitch",
    "parse_quantity",
    "quantity_text",
    "sheet_text",
    "spare_text",
    "split_text",
    "ticks",
    "told",
]
