"""Which test answers which field case, and on what the right value rests.

A field case is a situation that people who hang hoods meet, set in an invented home of our own with its geometry. The
right value comes from a rule (its source stands in the catalogue), from geometry of the given numbers, or from what
experienced people conclude; the tests say which number is which. Cases that no test answers carry the reason.
"""

from __future__ import annotations

from dataclasses import dataclass

__all__ = ["FIELD_CASES", "FieldCase"]

RULE, GEOMETRY, PEOPLE = "rule with source", "geometry", "what experienced people conclude"


@dataclass(frozen=True, slots=True)
class FieldCase:
    """One situation: its topic, what its right value rests on, and the tests that answer it (file::function)."""

    id: str
    topic: str
    basis: tuple[str, ...]
    tests: tuple[str, ...] = ()
    not_covered: str = ""


_MEMBERS, _ENDS = "cases/test_members_in_the_way.py::test_", "cases/test_where_the_duct_ends.py::test_"
_LAID, _HEIGHTS = "cases/test_how_the_duct_is_laid.py::test_", "cases/test_heights_covers_and_air.py::test_"
_FOUND, _AIR = "cases/test_ways_that_must_be_found.py::test_", "airflow/test_air_cases.py::test_"
_R_MEMBERS, _R_DUCT = "rules/test_cases_members.py::test_", "rules/test_cases_duct.py::test_"
_R_HEIGHTS, _R_OUT = "rules/test_cases_heights.py::test_", "rules/test_cases_outdoors.py::test_"

FIELD_CASES: tuple[FieldCase, ...] = (
    FieldCase("F01", "a doubled member at the house edge crosses the duct's bay", (PEOPLE, RULE), (
        _MEMBERS + "a_doubled_member_that_carries_others_is_a_beam_and_takes_no_duct",
        _MEMBERS + "a_duct_along_the_bay_stops_at_the_beam_that_crosses_it",
        _MEMBERS + "the_way_out_is_a_face_that_is_not_behind_the_beam",
        _R_MEMBERS + "a_doubled_member_at_the_house_edge_takes_no_6_in_hole",
    )),
    FieldCase("F02", "I-joists: along them past a beam, or across their webs by the maker's chart", (RULE,), (
        _MEMBERS + "across_i_joists_by_their_makers_chart_and_not_by_a_third_of_the_depth",
        _MEMBERS + "without_the_chart_nobody_but_the_maker_allows_the_web_hole",
        _MEMBERS + "the_chart_never_covers_a_flange",
        _MEMBERS + "a_solid_beam_across_the_i_joists_takes_no_duct_chart_or_not",
        _MEMBERS + "the_joist_makers_chart_says_nothing_of_an_engineered_beam",
        _R_MEMBERS + "along_the_i_joists_the_beam_stops_it_and_across_them_the_chart_decides",
    )),
    FieldCase("F03", "a 2x8 rim with a small old hole, 6 in wanted: enlarge, or 5 in at the rim", (PEOPLE, GEOMETRY), (
        _MEMBERS + "6_in_through_a_2x8_rim_between_two_joists_is_tolerated_and_tight",
        _MEMBERS + "5_in_at_the_rim_keeps_more_wood_and_loses_air",
        _R_MEMBERS + "a_rim_in_one_bay_takes_6_in_and_keeps_a_sliver",
        _R_DUCT + "stepping_down_from_6_to_5_in_at_the_rim",
        _AIR + "6_to_5_in_at_the_rim",
    )),
    FieldCase("F04", "a joist with 8 of its 10 in notched out; run under the joists instead", (PEOPLE, RULE), (
        _MEMBERS + "8_in_notched_out_of_a_10_in_joist_is_five_times_too_much",
        _MEMBERS + "too_deep_is_said_before_too_long",
        _MEMBERS + "under_the_joists_the_ceiling_drops_by_the_duct_and_a_little",
        _MEMBERS + "no_route_of_ours_touches_the_joist_beside_the_wall",
        _R_MEMBERS + "a_half_round_8_in_deep_out_of_a_10_in_joist",
        _AIR + "ribbed_hose_and_turns_are_why_a_hood_never_drew",
    )),
    FieldCase("F05", "a bay too low for insulated 6 in round: a flat stretch with two transitions", (PEOPLE, GEOMETRY), (
        _LAID + "a_flat_stretch_in_a_low_bay_takes_two_transitions",
        _R_DUCT + "a_slot_3_by_10_does_for_6_in_round",
        _AIR + "rectangular_stretch_in_a_joist_bay_instead_of_6_in_round",
    )),
    FieldCase("F06", "a truss on the duct's line, found after the hood hung", (PEOPLE, GEOMETRY), (
        _MEMBERS + "a_truss_is_never_cut",
        _MEMBERS + "past_the_truss_by_half_duct_half_chord_and_a_gap",
        _FOUND + "the_search_goes_past_the_truss_and_cuts_none",
        _R_MEMBERS + "a_truss_is_never_cut",
        _R_HEIGHTS + "a_cover_cannot_follow_a_duct_that_leaves_it",
    )),
    FieldCase("F07", "a stud dead centre in a flat outlet through an outside wall", (PEOPLE, RULE), (
        _MEMBERS + "a_cut_stud_is_framed_like_a_small_window",
        _MEMBERS + "the_wallboard_is_opened_from_stud_to_stud",
        _R_MEMBERS + "a_stud_dead_centre_in_a_3_by_10_opening_is_framed_like_a_window",
    )),
    FieldCase("F08", "the same behind finished cabinets: reframe, go over it, or move the range", (PEOPLE, GEOMETRY), (
        _LAID + "reframe_or_go_over_it_or_move_the_range",
        _LAID + "moving_and_framing_are_offered_with_what_they_cost",
    )),
    FieldCase("F09", "a stud with cables, a garage behind; may the duct be split round it?", (RULE, GEOMETRY), (
        _LAID + "behind_a_cabled_stud_the_cable_moves_first_and_the_duct_is_never_split",
        _LAID + "the_bay_beside_it_is_reached_through_the_cabinet_and_costs_its_space",
        _R_OUT + "cables_behind_the_hood_are_moved_first",
    )),
    FieldCase("F10", "a furring strip on structural brick, right behind the outlet", (PEOPLE,), (
        _MEMBERS + "a_furring_strip_may_be_cut_without_a_header",
        _R_MEMBERS + "a_furring_strip_on_brick_may_be_cut_with_no_header",
    )),
    FieldCase("F11", "brick and block: lintel or not, round or flat", (PEOPLE, GEOMETRY), (
        _MEMBERS + "brick_and_block_need_no_lintel_over_a_hood_duct",
        _MEMBERS + "a_hole_wider_than_two_bricks_is_no_longer_ours_to_allow",
        _R_MEMBERS + "brick_and_block_need_no_lintel_over_a_duct",
    )),
    FieldCase("F12", "up to a soffit, across, down behind a cabinet and out", (PEOPLE,), (
        _LAID + "down_and_out_hangs_on_the_makers_length",
        _LAID + "a_sag_where_grease_and_water_collect_is_flagged",
        _R_DUCT + "up_across_down_and_out_has_many_elbows_but_no_trap",
    )),
    FieldCase("F13", "7 to 6 in right on the hood; a gutter in front of the cap's flap", (PEOPLE, GEOMETRY), (
        _LAID + "7_to_6_in_right_on_the_hood_loses_a_quarter_of_the_area",
        _ENDS + "a_gutter_in_front_of_the_flap",
        _R_DUCT + "a_reducer_right_on_the_hood",
        _R_OUT + "a_gutter_keeps_the_flap_shut",
        _AIR + "reducer_from_7_to_6_in_right_above_the_hood",
    )),
    FieldCase("F14", "two storeys: up through the room above, or 8 ft sideways", (PEOPLE,), (
        _LAID + "sideways_beats_a_roof_that_needs_a_chase_in_the_room_above",
        _R_DUCT + "one_elbow_and_8_ft_sideways_is_fine",
    )),
    FieldCase("F15", "an island hood under a soffit whose cabinets go away", (RULE,), not_covered=(
        "a scene is a canopy on a wall: what holds an island hood to a soffit is not described; the height by the "
        "maker's number is answered by F35 and F36"
    )),
    FieldCase("F16", "a cap just under a vented soffit, a door beside it", (PEOPLE, RULE), (
        _ENDS + "a_cap_under_a_vented_soffit_beside_a_door",
        _R_OUT + "a_cap_just_under_a_vented_soffit_beside_a_door",
    )),
    FieldCase("F17", "a cap within 3 ft of a window, under an outdoor unit", (PEOPLE, RULE), (
        _ENDS + "an_opening_sash_counts_and_a_fixed_one_does_not",
        _ENDS + "the_edition_decides_how_near_a_cap_may_sit_above_a_window",
        _ENDS + "no_code_speaks_of_an_outdoor_unit_above_the_cap",
        _R_OUT + "fixed_sash_opening_sash_and_a_cap_above_in_the_newest_edition",
    )),
    FieldCase("F18", "a cap beside one's own window, under the neighbours' windows", (PEOPLE, RULE), (
        _ENDS + "beside_ones_own_window_and_under_three_neighbours",
        _R_OUT + "a_window_onto_a_shaft_with_neighbours_above",
    )),
    FieldCase("F19", "a wall half a yard inside the lot line, place known or not", (PEOPLE, RULE), (
        _ENDS + "half_a_yard_to_the_lot_line",
        _R_OUT + "a_wall_a_foot_and_a_half_inside_the_lot_line",
        _R_OUT + "where_no_number_is_known_it_is_asked_not_guessed",
    )),
    FieldCase("F20", "through the garage, or ending in it", (PEOPLE, RULE), (
        _ENDS + "20_ft_through_the_garage_to_the_open_air_is_allowed_and_its_loss_told",
        _R_OUT + "through_the_garage_to_the_outside_is_allowed_and_asks_for_steel",
        _AIR + "20_ft_through_the_garage",
    )),
    FieldCase("F21", "an electric range whose hood blows into the garage", (PEOPLE, RULE), (
        _ENDS + "blowing_into_an_enclosed_place_is_broken_whatever_cooks",
        _R_OUT + "ending_in_the_garage_is_not_outdoors_whatever_cooks",
    )),
    FieldCase("F22", "a rear outlet into a cold garage, then out of its side wall", (RULE,), (
        _ENDS + "into_a_cold_garage_right_and_out_of_its_side_wall",
        _R_OUT + "a_cold_garage_asks_for_insulation_a_fall_and_a_damper",
    )),
    FieldCase("F23", "a porch's attic is not the open air", (RULE,), (
        _ENDS + "blowing_into_an_enclosed_place_is_broken_whatever_cooks",
        _ENDS + "a_porch_is_crossed_to_its_far_edge",
        _R_OUT + "enclosed_places_are_not_outdoors",
        _R_OUT + "snow_over_the_roof_cap",
    )),
    FieldCase("F24", "a duct in a one-hour corridor wall", (PEOPLE,), (
        _ENDS + "a_duct_through_a_rated_wall_is_flagged_with_the_shaft_that_people_build",
        _FOUND + "a_rated_wall_is_left_alone_when_there_is_another_way",
        _R_OUT + "a_rated_corridor_wall_is_flagged_and_refused",
        _R_OUT + "a_run_up_inside_a_rated_wall_is_found_by_its_plates",
    )),
    FieldCase("F25", "a hose closed up in a soffit before anybody looked", (PEOPLE, RULE), (
        _LAID + "a_hose_closed_up_in_a_soffit_is_opened_inspected_and_replaced",
        _R_DUCT + "flexible_duct_is_broken_wherever_it_is",
    )),
    FieldCase("F26", "10 in through the roof: wood beside it, screws, how far the cap takes it", (PEOPLE,), (
        _LAID + "no_separation_from_wood_is_asked_for_and_screws_are_a_matter_of_choice",
        _LAID + "three_inches_into_the_roof_cap_are_cut_too",
        _R_DUCT + "three_screws_a_joint_are_fine_and_a_gap_to_wood_is_only_advised",
    )),
    FieldCase("F27", "350 cfm in a tight house", (PEOPLE, RULE), (
        _HEIGHTS + "350_cfm_needs_no_makeup_air_by_code_and_is_warned_of_all_the_same",
        _R_OUT + "350_cfm_in_a_tight_house",
        _AIR + "350_cfm_in_a_tight_house_and_287_cfm_through_an_opening",
    )),
    FieldCase("F28", "how large a passive opening must be", (GEOMETRY, PEOPLE), (
        _HEIGHTS + "287_cfm_at_3_pa_come_through_a_foot_square",
    )),
    FieldCase("F29", "a makeup damper for a hood without terminals", (PEOPLE, RULE), (
        _HEIGHTS + "above_the_threshold_the_damper_follows_the_fan_and_is_bought",
        _HEIGHTS + "400_cfm_exactly_buys_no_damper",
        _R_OUT + "more_than_400_cfm_asks_for_a_damper_that_follows_the_fan",
    )),
    FieldCase("F30", "small fans already pull a flue backwards", (PEOPLE,), (
        _HEIGHTS + "a_small_fan_can_pull_a_flue_back",
        _R_OUT + "the_threshold_is_no_proof_of_safety",
    )),
    FieldCase("F31", "recirculate or blow outdoors?", (PEOPLE,), (
        _ENDS + "where_no_way_leads_outdoors_the_hood_that_cleans_and_returns_is_what_is_left",
    )),
    FieldCase("F32", "less than 20 in to the hood, less than 30 to the wooden cabinet", (PEOPLE, RULE), (
        _HEIGHTS + "two_surfaces_two_figures",
        _R_HEIGHTS + "less_than_20_in_between_cooktop_and_hood",
    )),
    FieldCase("F33", "6 in beside the rangetop: how high does that zone reach?", (GEOMETRY,), (
        _R_HEIGHTS + "both_readings_of_the_side_clearance_are_told_with_their_spare",
        _R_HEIGHTS + "a_side_cabinet_that_hangs_lower_breaks_the_first_reading",
    )),
    FieldCase("F34", "side cabinets 1/4 in too low from the counter; the hood rises, and its hole", (GEOMETRY,), (
        _R_HEIGHTS + "a_quarter_inch_short_depends_on_what_it_is_measured_from",
        _LAID + "6_in_higher_means_a_new_hole_6_in_higher",
        _R_DUCT + "the_old_hole_is_used_enlarged_or_closed",
    )),
    FieldCase("F35", "a listed appliance too low under its cabinet", (PEOPLE, GEOMETRY), (
        _HEIGHTS + "the_cabinet_shrinks_by_what_the_height_is_short",
        _R_HEIGHTS + "a_listed_appliance_too_low_tells_by_how_much_the_cabinet_must_shrink",
    )),
    FieldCase("F36", "42 in to wood, 30 in by the place, the hood's own figure", (PEOPLE,), (
        _R_HEIGHTS + "three_figures_stay_apart",
    )),
    FieldCase("F37", "a cooker in a stone recess", (RULE, GEOMETRY), (
        _HEIGHTS + "beside_stone_only_the_maker_sets_a_distance",
        _R_HEIGHTS + "stone_beside_the_cooker_does_not_burn_but_bounds_the_canopy",
    )),
    FieldCase("F38", "the hood's duct and a riser want the same place", (PEOPLE, GEOMETRY), (
        _LAID + "two_45s_move_the_duct_past_the_riser_and_their_straight_is_cut_to_length",
        _LAID + "half_an_inch_less_and_both_want_the_same_place",
        _FOUND + "the_search_goes_round_the_riser_with_an_offset",
    )),
    FieldCase("F39", "the old hole at the left for 100 mm, the new outlet in the middle with 120", (GEOMETRY,), (
        _LAID + "the_old_hole_is_at_the_left_and_smaller_than_the_new_outlet",
        _R_DUCT + "a_reducer_right_on_the_hood",
    )),
    FieldCase("F40", "a flat duct in or on a concrete slab, decided before the pour", (PEOPLE,), not_covered=(
        "a scene has no floor build-up over a slab in which a duct could lie, and describes no island hood; that a slab "
        "is cored only where an engineer says so is tested beside the rules"
    )),
    FieldCase("F41", "150 mm through the settling gap of a log wall", (PEOPLE, GEOMETRY), (
        _LAID + "150_mm_do_not_go_through_a_gap_of_130",
        _LAID + "the_trim_carries_nothing_and_gives_way",
    )),
    FieldCase("F42", "4 ft up and 6 ft across to the outside wall", (PEOPLE,), (
        _LAID + "4_ft_up_and_6_ft_across_is_one_elbow_in_metal",
        _LAID + "plastic_is_refused",
        _R_DUCT + "4_ft_up_and_6_ft_across_in_metal_never_plastic",
    )),
    FieldCase("F43", "icy air out of the hood, the duct's end unknown", (PEOPLE,), (
        _LAID + "an_old_duct_is_followed_before_anything_is_joined_to_it",
        _R_DUCT + "an_old_duct_with_an_unknown_end_is_followed_first",
        _R_DUCT + "without_a_damper_it_is_cold_and_wet",
    )),
    FieldCase("F44", "an empty old chase straight up to a new roof cap", (PEOPLE, GEOMETRY), (
        _LAID + "an_old_chase_takes_plain_lengths_and_no_elbow",
        _R_DUCT + "a_reused_chase_with_three_straight_lengths_has_nothing_broken_about_its_way",
    )),
    FieldCase("F45", "a hose between two windows under the eave", (RULE, GEOMETRY), (
        _ENDS + "a_hose_between_two_windows_under_the_eave",
        _R_OUT + "windows_both_sides_and_a_flexible_hose",
    )),
    FieldCase("F46", "a heavy 60 in hood under a high pitched roof without an attic", (PEOPLE, GEOMETRY), (
        _HEIGHTS + "under_a_pitched_roof_the_cover_is_as_long_as_the_ceiling_is_high_there",
        _R_HEIGHTS + "a_pitched_room_without_an_attic_asks_for_a_long_cover",
    )),
    FieldCase("F47", "the duct does not come down in the middle of the cabinet", (PEOPLE, GEOMETRY), (
        _FOUND + "a_taller_cabinet_absorbs_more_offset",
        _LAID + "a_hose_inside_the_cabinet_is_not_the_answer",
    )),
    FieldCase("F48", "how wide and deep the canopy should be", (PEOPLE,), (
        _R_HEIGHTS + "three_inches_of_overhang_and_half_of_the_front_burners",
        _R_HEIGHTS + "a_hood_off_the_middle_of_the_cooktop_loses_on_one_side",
    )),
    FieldCase("F49", "a cover made for 8 ft in a higher or lower room", (PEOPLE, GEOMETRY), (
        _HEIGHTS + "the_cover_reaches_the_ceiling_or_is_cut_or_extended",
        _R_HEIGHTS + "a_cover_for_an_8_ft_ceiling_in_higher_and_lower_rooms",
    )),
    FieldCase("F50", "an 800 cfm hood on the old 6 in duct", (PEOPLE, GEOMETRY), (
        _LAID + "800_cfm_does_not_go_through_6_in",
        _LAID + "the_larger_hood_needs_a_larger_hole",
        _R_DUCT + "a_strong_hood_on_a_narrow_duct",
        _R_DUCT + "a_new_800_cfm_hood_on_the_old_6_in_duct_tears_it_out",
        _AIR + "800_cfm_hood_on_the_old_6_in_duct",
    )),
    FieldCase("F51", "a wall cap on vinyl siding", (PEOPLE,), (
        _LAID + "what_a_wall_cap_needs_hangs_on_the_cladding",
    )),
)  # fmt: skip
