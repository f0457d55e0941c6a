#include "engine/method/registry.h"

#include <algorithm>
#include <iterator>

#include "engine/acceptance/layer_survey.h"
#include "engine/acceptance/load_charts.h"
#include "engine/acceptance/percent_within_limits.h"
#include "engine/acceptance/run_length.h"
#include "engine/acceptance/sequential_plan.h"
#include "engine/acceptance/single_plan.h"
#include "engine/acceptance/stone_shape.h"
#include "engine/acceptance/stones_for_share.h"
#include "engine/acceptance/two_piles.h"
#include "engine/acceptance/whole_curve_limits.h"
#include "engine/blend/blended_percent.h"
#include "engine/blend/scalped_percent.h"
#include "engine/blend/share_from_one_sieve.h"
#include "engine/blend/shares_by_volume.h"
#include "engine/chute/overtopping_abt_johnson.h"
#include "engine/chute/overtopping_khan_ahmad.h"
#include "engine/chute/overtopping_mishra.h"
#include "engine/chute/overtopping_stephenson.h"
#include "engine/chute/rock_chute.h"
#include "engine/chute/spillway_critical_flow.h"
#include "engine/chute/spillway_face_rock.h"
#include "engine/chute/trapezoid_weir.h"
#include "engine/cover/bare_soil_shear.h"
#include "engine/cover/blanket_anchors.h"
#include "engine/cover/blanket_rolls.h"
#include "engine/cover/blanket_shear.h"
#include "engine/cover/cover_line.h"
#include "engine/cover/grass_lining.h"
#include "engine/cover/lining_limits.h"
#include "engine/cover/non_scour_velocity.h"
#include "engine/cover/rolled_product_roughness.h"
#include "engine/cover/rolled_product_shear.h"
#include "engine/cover/turf_mat_cover.h"
#include "engine/cover/vegetated_velocity.h"
#include "engine/evidence/count_to_mass.h"
#include "engine/evidence/percent_limits.h"
#include "engine/evidence/percentile_limits.h"
#include "engine/evidence/rank_limits.h"
#include "engine/evidence/same_rock.h"
#include "engine/evidence/weighed_sample.h"
#include "engine/filter/cistin_ziems.h"
#include "engine/filter/filter_band.h"
#include "engine/filter/filter_ratios.h"
#include "engine/filter/filter_thickness.h"
#include "engine/filter/filter_window.h"
#include "engine/filter/geotextile_filter.h"
#include "engine/filter/geotextile_strength.h"
#include "engine/grade_control/constructed_riffle.h"
#include "engine/grade_control/grouted_boulder_drop.h"
#include "engine/grade_control/loose_rock_drop_table.h"
#include "engine/grade_control/low_drop.h"
#include "engine/grade_control/sloping_rock_drop.h"
#include "engine/grade_control/weighted_creep.h"
#include "engine/hydraulics/bed_roughness.h"
#include "engine/hydraulics/bend_geometry_method.h"
#include "engine/hydraulics/composite_roughness_method.h"
#include "engine/hydraulics/critical_depth_method.h"
#include "engine/hydraulics/gradually_varied_flow_method.h"
#include "engine/hydraulics/hydraulic_jump_method.h"
#include "engine/hydraulics/lateral_distribution_method.h"
#include "engine/hydraulics/normal_depth_method.h"
#include "engine/hydraulics/section_conveyance_method.h"
#include "engine/hydraulics/slice_flow_method.h"
#include "engine/hydraulics/velocity_shear.h"
#include "engine/hydraulics/wall_shear_share.h"
#include "engine/hydrology/flood_frequency.h"
#include "engine/mix/compressible_packing.h"
#include "engine/mix/degree_of_filling.h"
#include "engine/mix/earthwork_volume.h"
#include "engine/mix/furnas_packing.h"
#include "engine/mix/lighter_stone_limit.h"
#include "engine/mix/mix_quantities.h"
#include "engine/mix/mixture_porosity.h"
#include "engine/mix/oversize_correction.h"
#include "engine/mix/packing_of_classes.h"
#include "engine/mix/rock_voids.h"
#include "engine/mix/toufar_packing.h"
#include "engine/mix/void_occupation.h"
#include "engine/outfall/dane_county_apron.h"
#include "engine/outfall/front_range_outlet.h"
#include "engine/outfall/low_tailwater_basin.h"
#include "engine/outfall/outfall_apron.h"
#include "engine/outfall/outfall_basin.h"
#include "engine/outfall/outlet_bohan.h"
#include "engine/outfall/outlet_fletcher_grace.h"
#include "engine/outfall/outlet_protection_length.h"
#include "engine/outfall/outlet_velocity.h"
#include "engine/outfall/scs_outlet_apron.h"
#include "engine/quantities/fabric_area.h"
#include "engine/quantities/layer_rock.h"
#include "engine/quantities/truck_loads.h"
#include "engine/reliability/chance_of_instability.h"
#include "engine/reliability/hudson_reliability.h"
#include "engine/reliability/lognormal_margin.h"
#include "engine/reliability/target_reliability.h"
#include "engine/rock/stone_mass_method.h"
#include "engine/scour/antidune_allowance.h"
#include "engine/scour/armouring_scour.h"
#include "engine/scour/blench_scour.h"
#include "engine/scour/clear_water_contraction_scour.h"
#include "engine/scour/cohesive_competent_velocity.h"
#include "engine/scour/competent_depth.h"
#include "engine/scour/competent_velocity.h"
#include "engine/scour/degradation_above_control.h"
#include "engine/scour/dune_allowance.h"
#include "engine/scour/hec11_toe_depth.h"
#include "engine/scour/lacey_scour.h"
#include "engine/scour/live_bed_contraction_scour.h"
#include "engine/scour/maynord_bend_scour.h"
#include "engine/scour/meyer_peter_muller_slope.h"
#include "engine/scour/neill_scour.h"
#include "engine/scour/pier_scour.h"
#include "engine/scour/schoklitsch_slope.h"
#include "engine/scour/thorne_bend_scour.h"
#include "engine/scour/toe_depth.h"
#include "engine/scour/zeller_bend_scour.h"
#include "engine/sizing/abutment_riprap.h"
#include "engine/sizing/abutment_velocity.h"
#include "engine/sizing/bend_shear.h"
#include "engine/sizing/bend_velocity_method.h"
#include "engine/sizing/california_bank_and_shore.h"
#include "engine/sizing/escarameia_may.h"
#include "engine/sizing/fhwa_revetment.h"
#include "engine/sizing/fhwa_shear_lining.h"
#include "engine/sizing/fhwa_stability_factor_revetment.h"
#include "engine/sizing/freeboard.h"
#include "engine/sizing/front_range_channel.h"
#include "engine/sizing/guide_bank.h"
#include "engine/sizing/hudson.h"
#include "engine/sizing/ice_and_debris.h"
#include "engine/sizing/isbash.h"
#include "engine/sizing/key_trench.h"
#include "engine/sizing/layer_thickness.h"
#include "engine/sizing/length_protected_below_bend.h"
#include "engine/sizing/lining_roughness_balance.h"
#include "engine/sizing/lining_roughness_trial.h"
#include "engine/sizing/pier_riprap.h"
#include "engine/sizing/pier_riprap_layout.h"
#include "engine/sizing/pilarczyk.h"
#include "engine/sizing/propeller_wash.h"
#include "engine/sizing/protection_extents.h"
#include "engine/sizing/reservoir_wave_rock.h"
#include "engine/sizing/rock_transition.h"
#include "engine/sizing/side_slope_stability_factor.h"
#include "engine/sizing/spur_spacing.h"
#include "engine/sizing/stilling_basin_riprap.h"
#include "engine/sizing/superelevation.h"
#include "engine/sizing/tractive_force.h"
#include "engine/sizing/usace_bank_and_bed.h"
#include "engine/sizing/usace_steep_slope.h"
#include "engine/sizing/van_der_meer.h"
#include "engine/soil/burenkova.h"
#include "engine/soil/carrier_conductivity.h"
#include "engine/soil/chang_zhang.h"
#include "engine/soil/critical_gradient.h"
#include "engine/soil/exit_gradient.h"
#include "engine/soil/hazen_conductivity.h"
#include "engine/soil/istomina.h"
#include "engine/soil/kenney_lau.h"
#include "engine/soil/kezdi.h"
#include "engine/soil/kozeny_carman_conductivity.h"
#include "engine/soil/soil_classification.h"
#include "engine/toe/launchable_toe.h"
#include "engine/toe/peaked_stone_toe.h"
#include "engine/toe/thickened_toe.h"
#include "engine/toe/trench_toe.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/photo_size.h"
#include "engine/waves/cem_wave_growth.h"
#include "engine/waves/effective_fetch.h"
#include "engine/waves/reservoir_run_up.h"
#include "engine/waves/smb_wave_growth.h"
#include "engine/waves/spm_wave_growth.h"
#include "engine/waves/wave_run_up.h"
#include "engine/waves/wave_toe.h"
#include "engine/waves/wind_over_water.h"

namespace proofstone {

const std::vector<const SizingMethod*>& sizing_methods() {
  // clang-format off: one method a line
  static const std::vector<const SizingMethod*> methods{
      &usace_bank_and_bed_method(),
      &fhwa_shear_lining_method(),
      &isbash_method(),
      &front_range_channel_method(),
      &fhwa_revetment_method(),
      &fhwa_stability_factor_revetment_method(),
      &usace_steep_slope_method(),
      &side_slope_stability_factor_method(),
      &tractive_force_method(),
      &stilling_basin_riprap_method(),
      &pilarczyk_method(),
      &escarameia_may_method(),
      &california_bank_and_shore_method(),
      &pier_riprap_method(),
      &abutment_riprap_method(),
      &rock_chute_method(),
      &overtopping_abt_johnson_method(),
      &overtopping_mishra_method(),
      &overtopping_stephenson_method(),
      &overtopping_khan_ahmad_method(),
      &spillway_face_rock_method(),
      &outfall_apron_method(),
      &front_range_outlet_method(),
      &scs_outlet_apron_method(),
      &dane_county_apron_method(),
      &outlet_velocity_method(),
      &outlet_bohan_method(),
      &outlet_fletcher_grace_method(),
      &outfall_basin_method(),
      &sloping_rock_drop_method(),
      &loose_rock_drop_table_method(),
      &constructed_riffle_method(),
      &hudson_method(),
      &reservoir_wave_rock_method(),
      &van_der_meer_method(),
  };
  // clang-format on
  return methods;
}

const std::vector<const Method*>& all_methods() {
  static const std::vector<const Method*> methods = [] {
    std::vector<const Method*> all(sizing_methods().begin(), sizing_methods().end());
    // clang-format off: one method a line
    const std::vector<const Method*> others{
        &outlet_protection_length_method(),
        &low_tailwater_basin_method(),
        &grouted_boulder_drop_method(),
        &weighted_creep_method(),
        &low_drop_method(),
        &spillway_critical_flow_method(),
        &trapezoid_weir_method(),
        &bare_soil_shear_method(),
        &grass_lining_method(),
        &rolled_product_shear_method(),
        &rolled_product_roughness_method(),
        &turf_mat_cover_method(),
        &cover_line_method(),
        &blanket_shear_method(),
        &blanket_rolls_method(),
        &blanket_anchors_method(),
        &lining_limits_method(),
        &vegetated_velocity_method(),
        &non_scour_velocity_method(),
        &layer_thickness_method(),
        &lacey_scour_method(),
        &blench_scour_method(),
        &neill_scour_method(),
        &maynord_bend_scour_method(),
        &thorne_bend_scour_method(),
        &zeller_bend_scour_method(),
        &live_bed_contraction_scour_method(),
        &clear_water_contraction_scour_method(),
        &competent_velocity_method(),
        &competent_depth_method(),
        &cohesive_competent_velocity_method(),
        &antidune_allowance_method(),
        &dune_allowance_method(),
        &armouring_scour_method(),
        &schoklitsch_slope_method(),
        &meyer_peter_muller_slope_method(),
        &degradation_above_control_method(),
        &pier_scour_method(),
        &hec11_toe_depth_method(),
        &toe_depth_method(),
        &pier_riprap_layout_method(),
        &guide_bank_method(),
        &spur_spacing_method(),
        &abutment_velocity_method(),
        &launchable_toe_method(),
        &trench_toe_method(),
        &thickened_toe_method(),
        &peaked_stone_toe_method(),
        &wave_toe_method(),
        &soil_classification_method(),
        &hazen_conductivity_method(),
        &kozeny_carman_conductivity_method(),
        &carrier_conductivity_method(),
        &critical_gradient_method(),
        &exit_gradient_method(),
        &kenney_lau_method(),
        &kezdi_method(),
        &burenkova_method(),
        &chang_zhang_method(),
        &istomina_method(),
        &filter_ratios_method(),
        &filter_window_method(),
        &filter_band_method(),
        &cistin_ziems_method(),
        &filter_thickness_method(),
        &geotextile_filter_method(),
        &geotextile_strength_method(),
        &layer_rock_method(),
        &truck_loads_method(),
        &fabric_area_method(),
        &lining_roughness_balance_method(),
        &lining_roughness_trial_method(),
        &ice_and_debris_method(),
        &propeller_wash_method(),
        &protection_extents_method(),
        &key_trench_method(),
        &rock_transition_method(),
        &effective_fetch_method(),
        &wind_over_water_method(),
        &spm_wave_growth_method(),
        &smb_wave_growth_method(),
        &cem_wave_growth_method(),
        &revetment_run_up_method(),
        &rock_slope_run_up_method(),
        &reservoir_run_up_method(),
        &normal_depth_method(),
        &critical_depth_method(),
        &section_conveyance_method(),
        &gradually_varied_flow_method(),
        &hydraulic_jump_method(),
        &composite_roughness_method(),
        &bed_roughness_method(),
        &slice_flow_method(),
        &lateral_distribution_method(),
        &wall_shear_share_method(),
        &velocity_shear_method(),
        &bend_geometry_method(),
        &bend_velocity_method(),
        &bend_shear_method(),
        &length_protected_below_bend_method(),
        &superelevation_method(),
        &freeboard_method(),
        &partial_duration_return_period_method(),
        &risk_of_exceedance_method(),
        &log_pearson_discharge_method(),
        &degree_of_filling_method(),
        &lighter_stone_limit_method(),
        &mix_quantities_method(),
        &earthwork_volume_method(),
        &rock_voids_method(),
        &rock_and_fill_packing_method(),
        &packing_of_classes_method(),
        &toufar_packing_method(),
        &furnas_packing_method(),
        &mixture_porosity_method(),
        &void_occupation_method(),
        &oversize_correction_method(),
        &blended_percent_method(),
        &share_from_one_sieve_method(),
        &scalped_percent_method(),
        &shares_by_volume_method(),
        &stone_mass_method(),
        &count_to_mass_method(),
        &weighed_sample_method(),
        &photo_ball_scale_method(),
        &photo_size_method(),
        &percent_limits_method(),
        &percentile_limits_method(),
        &rank_limits_method(),
        &same_rock_method(),
        &average_run_length_method(),
        &cumulative_sum_chart_method(),
        &individuals_chart_method(),
        &layer_survey_method(),
        &moving_average_chart_method(),
        &percent_within_limits_method(),
        &sequential_count_method(),
        &single_sampling_plan_method(),
        &stone_shape_method(),
        &stones_for_share_method(),
        &two_piles_method(),
        &whole_curve_limits_method(),
        &chance_of_instability_method(),
        &target_reliability_method(),
        &lognormal_margin_method(),
        &hudson_reliability_method(),
    };
    // clang-format on
    all.insert(all.end(), others.begin(), others.end());
    std::vector<const Method*> grouped;
    for (const auto group : {MethodGroup::rock_size, MethodGroup::layer, MethodGroup::toe,
                             MethodGroup::scour, MethodGroup::soil, MethodGroup::filter,
                             MethodGroup::mix, MethodGroup::cover, MethodGroup::quantities,
                             MethodGroup::water, MethodGroup::evidence, MethodGroup::reliability}) {
      std::copy_if(all.begin(), all.end(), std::back_inserter(grouped),
                   [&](const Method* method) { return method->description().group == group; });
    }
    return grouped;
  }();
  return methods;
}

namespace {

template <class AnyMethod>
const AnyMethod* called(std::string_view id, const std::vector<const AnyMethod*>& methods) {
  const auto found = std::find_if(methods.begin(), methods.end(), [&](const AnyMethod* method) {
    return method->description().id == id;
  });
  return found == methods.end() ? nullptr : *found;
}

}  // namespace

const Method* find_method(std::string_view id) { return called(id, all_methods()); }

const SizingMethod* find_sizing_method(std::string_view id) { return called(id, sizing_methods()); }

}  // namespace proofstone
