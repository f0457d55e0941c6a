#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/source.h"
#include "engine/quantity/measure.h"

namespace proofstone {

/// One line of a calculation that a reviewer can redo by hand.
struct Step {
  // Made, copied and let go in one file: what that takes would else be compiled in every file that
  // does.
  Step();
  Step(std::string_view as_symbol, std::string_view in_words, std::string_view by_formula,
       Measure found, LengthUse use, std::string_view from);
  Step(const Step&);
  Step(Step&&) noexcept;
  Step& operator=(const Step&);
  Step& operator=(Step&&) noexcept;
  ~Step();

  std::string symbol;   ///< "D30"
  std::string meaning;  ///< "required stone size, 30 % smaller by mass"
  std::string
      formula;  ///< "Sf·Cs·Cv·CT·d·[(γw/(γs−γw))^½·V/√(K1·g·d)]^2.5"; empty for a given value
  Measure value;
  LengthUse length_use = LengthUse::ground;
  std::string source;  ///< where the formula or the value comes from; may be empty for arithmetic
};

/// The working of one result, in the order it was done.
class Steps {
 public:
  Steps();
  Steps(const Steps&);
  Steps(Steps&&) noexcept;
  Steps& operator=(const Steps&);
  Steps& operator=(Steps&&) noexcept;
  ~Steps();

  /// A value taken as given: from the document, a table or a default; `origin` says which.
  void given(std::string_view symbol, std::string_view meaning, Measure value,
             std::string_view origin = {});
  /// A value computed by `formula`.
  void computed(std::string_view symbol, std::string_view meaning, std::string_view formula,
                Measure value, std::string_view source = {});
  /// As above for the size of a stone, which is read in inches or millimetres.
  void given_rock(std::string_view symbol, std::string_view meaning, Length size,
                  std::string_view origin = {});
  void computed_rock(std::string_view symbol, std::string_view meaning, std::string_view formula,
                     Length size, std::string_view source = {});
  /// As above for the grains of a soil or a filter, which are read in millimetres.
  void given_grain(std::string_view symbol, std::string_view meaning, Length size,
                   std::string_view origin = {});
  void computed_grain(std::string_view symbol, std::string_view meaning, std::string_view formula,
                      Length size, std::string_view source = {});
  void append(const Steps& other);
  void append(Steps&& other);

  /// Working that nobody will read: what is noted is dropped.
  static Steps unread();

  const std::vector<Step>& lines() const { return lines_; }

 private:
  void note(std::string_view symbol, std::string_view meaning, std::string_view formula,
            Measure value, LengthUse use, std::string_view source);

  std::vector<Step> lines_;
  bool read_ = true;
};

}  // namespace proofstone

extern template class std::vector<proofstone::Step>;
