"""BLOW: what a fan moves through a duct, what each part costs, and what the kitchen asks for."""

from routeviz.airflow.makeup import makeup_air
from routeviz.airflow.needs import air_need
from routeviz.airflow.solve import flow_along_cfm, flow_cfm, solve, solve_many

__all__ = ["air_need", "flow_along_cfm", "flow_cfm", "makeup_air", "solve", "solve_many"]
