"""BLOW: what a fan moves through a duct, what each part costs, and what the kitchen asks for.

How the air is worked out:

- Losses are of total pressure, on each part's own velocity pressure, the outlet's last one included. Fan static
  pressure leaves out the velocity pressure at the collar, so the fan is asked for the sum of the losses less that.
- Friction is Darcy-Weisbach with Colebrook's factor; rectangular and oval duct by true velocity and hydraulic diameter,
  while the round duct of equal friction is reported beside it. Elbows add the friction of their arc.
- Every coefficient carries a low and a high end; the band of the flow takes all losses at one end, and both ends of
  what was assumed of the fan. Caps matter most and are known least.
- Two close elbows lose more than their sum: known for sharp elbows, a choice of ours for radius elbows, and marked so.
- The code's own length method stands beside the computed length and never enters it.
"""

from routeviz.airflow.makeup import fan_cfm, makeup_air
from routeviz.airflow.needs import air_need
from routeviz.airflow.solve import flow_along_cfm, flow_cfm, solve, solve_many

__all__ = ["air_need", "fan_cfm", "flow_along_cfm", "flow_cfm", "makeup_air", "solve", "solve_many"]
