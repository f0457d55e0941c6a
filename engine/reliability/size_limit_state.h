#pragma once

#include <memory>

#include "engine/method/varied_output.h"
#include "engine/reliability/limit_state.h"

namespace proofstone {

/// The limit state of rock in water: G = ln(available / (model factor · required)), where the size
/// required is what a sizing method asks for with no safety factor. Its variables are the uncertain
/// inputs of the method, then the model factor ("model-factor") and the available size
/// ("available-size") where they are uncertain.
class SizeLimitState : public LimitState {
 public:
  /// What may be uncertain beside the inputs. An absent distribution leaves the value as it is.
  struct Surroundings {
    double available_si = 0;  ///< size of the rock, m; the mean where a distribution is given
    std::optional<Distribution> available;
    std::optional<Distribution> model_factor;  ///< true over computed size required; else 1
  };

  /// `required` gives a size in metres; `spreads` belong to its inputs, one by one. The sizes are
  /// positive.
  SizeLimitState(std::shared_ptr<const VariedOutput> required,
                 const std::vector<Distribution>& spreads, const Surroundings& around);

  std::optional<double> margin(std::span<const double> values) const override;

 private:
  std::shared_ptr<const VariedOutput> required_;
  std::size_t inputs_;
  double available_si_;
  bool model_factor_varies_;
  bool available_varies_;
};

}  // namespace proofstone
