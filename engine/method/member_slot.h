#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/method/description.h"

namespace proofstone {

/// One member of a struct that is not known here, as reading, checking and varying need it. Values
/// are in SI units. What a member of its form cannot do does nothing.
class MemberSlot {
 public:
  MemberSlot() = default;
  MemberSlot(const MemberSlot&) = delete;
  MemberSlot& operator=(const MemberSlot&) = delete;
  virtual ~MemberSlot() = default;

  /// The value; absent for an optional one that was not given, a list and a choice.
  virtual std::optional<double> value(const void*) const { return std::nullopt; }
  virtual void set(void*, double) const {}
  /// The values of a list.
  virtual std::vector<double> values(const void*) const { return {}; }
  virtual void set_values(void*, const std::vector<double>&) const {}
  /// Takes the option of this number, in the order in which a choice describes them.
  virtual void choose(void*, std::size_t) const {}
};

/// A quantity.
template <class Struct, class Q>
class QuantitySlot final : public MemberSlot {
 public:
  explicit QuantitySlot(Q Struct::* member) : member_(member) {}
  std::optional<double> value(const void* object) const override {
    return (static_cast<const Struct*>(object)->*member_).si();
  }
  void set(void* object, double si) const override {
    static_cast<Struct*>(object)->*member_ = Q::from_si(si);
  }

 private:
  Q Struct::* member_;
};

/// A quantity that may be absent.
template <class Struct, class Q>
class OptionalSlot final : public MemberSlot {
 public:
  explicit OptionalSlot(std::optional<Q> Struct::* member) : member_(member) {}
  std::optional<double> value(const void* object) const override {
    const auto& held = static_cast<const Struct*>(object)->*member_;
    return held ? std::optional<double>(held->si()) : std::nullopt;
  }
  void set(void* object, double si) const override {
    static_cast<Struct*>(object)->*member_ = Q::from_si(si);
  }

 private:
  std::optional<Q> Struct::* member_;
};

/// A list of quantities.
template <class Struct, class Q>
class ListSlot final : public MemberSlot {
 public:
  explicit ListSlot(std::vector<Q> Struct::* member) : member_(member) {}
  std::vector<double> values(const void* object) const override {
    const auto& held = static_cast<const Struct*>(object)->*member_;
    std::vector<double> values;
    values.reserve(held.size());
    for (const Q& value : held) values.push_back(value.si());
    return values;
  }
  void set_values(void* object, const std::vector<double>& values) const override {
    auto& held = static_cast<Struct*>(object)->*member_;
    held.clear();
    held.reserve(values.size());
    for (const double si : values) held.push_back(Q::from_si(si));
  }

 private:
  std::vector<Q> Struct::* member_;
};

/// One of some words.
template <class Struct, class Enum>
class ChoiceSlot final : public MemberSlot {
 public:
  ChoiceSlot(Enum Struct::* member, std::vector<Enum> options)
      : member_(member), options_(std::move(options)) {}
  void choose(void* object, std::size_t option) const override {
    static_cast<Struct*>(object)->*member_ = options_[option];
  }

 private:
  Enum Struct::* member_;
  std::vector<Enum> options_;
};

}  // namespace proofstone
