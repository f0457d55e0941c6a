#include "report/field_pages.h"

namespace proofstone {
namespace {

constexpr const char* field_text = R"(# In the field

What is taken down stands on the device before the screen shows it; no signal is needed. Every entry
can be undone, and nothing that was kept is lost by it.

## Before you go near

- Keep off slopes that may slide, and out from under loads and buckets.
- Let the operator know where you are; a machine that swings does not see you.
- Nobody lifts what is too heavy, and nobody stands where a stone may roll.
- Near water, have somebody with you.

## Count stones

1. Choose the rock, then *Count stones*.
2. Say how the stones are picked. *Grid* and *line*: the stone under each point of a grid or tape, so
   far apart that no stone is met twice. *Area*: every stone that is seen on a marked piece of the
   surface. *All of them*: every stone of a load that was spread out. How they are picked decides how
   a number of stones becomes a mass, see [From a count to shares of mass](count-to-mass.md).
3. Measure the middle axis of each stone, which is neither the longest nor the shortest, and tap its
   size, or type it.
4. Do not choose stones. Where the hand chooses, it takes the large ones (Leopold 1970, abstract).
5. Count on until the screen says *meets* or *falls short*; it also says how many more stones may be
   needed. [How many before going out](single-sampling-plan.md).
6. Count at several places of the pile, and say where: a pile is not mixed.

## Quick look

Largest, smallest and most common stone by eye, shape and fines. It never accepts rock; it tells where
to count.

## Weigh

Spread a sample out, sort all of it by the sizes shown, weigh each group and count its stones. Weighed
shares are shares of mass without any conversion: [Sample weighed in groups](weighed-sample.md). One
large stone can be several percent of a sample, so a small sample says little of large rock.

## Load

Ticket, mass, and the size of its median stone if it was looked at. The loads of a lot are drawn in
their order, so that a drift of the supply shows before much of it is placed:
[Chart of single values](individuals-chart.md), [Cumulative sums](cumulative-sum-chart.md).

## Walk along placed work

The checks come from the design of that very zone: subgrade, filter, bedding, toe, thickness, filled
voids, surface. Measure at the points that are asked for and type them one by one. A check that fails
is a problem: report it, and it stays open until somebody decided and somebody closed it.

## Problem

What is not as designed, by whom it was seen, with photos. What is done about it is decided by whoever
answers for the design; work is used as it is only with the approval of the engineer, by name.

## Photos and positions

Photos lose what tells where, when and with what device they were taken unless you want it kept.
Where the device stood when something was taken down is kept only if you ask for it, nothing waits
for it, and it can be taken off again or left out of a copy.
)";

constexpr const char* words_text = R"(# What the words mean

## Outcomes

- **meets**: shown by the evidence, with the confidence that is stated beside it.
- **falls short**: contradicted by the evidence or by the calculation.
- **not yet known**: too little evidence, or an input is missing; the finding names what would decide it.
- **ask the designer**: not for the one who looks at the rock to decide.

## The site

- **Site**: one project document.
- **Flow case**: a discharge with its purpose and how often it comes.
- **Section**: a surveyed line across the stream. **Reach**: sections in their order.
- **Zone**: a part of the works with one lining.
- **Lining**: what a zone is built of: kind of rock, class, thickness, filter, toe, cover.
- **Finding**: one statement with its outcome, margin, confidence, reasons and sources.
- **Margin**: how far on the safe side. 1.00 is just enough; below it something is missing.
- **Remedy**: what could be done, computed.

## The rock

- **Class**: a published or own band of sizes that rock is ordered by: [Rock classes](rock-classes.md).
- **Band**: the percents smaller that are allowed at each size.
- **Gradation**: the percents smaller of a rock, by mass unless stated otherwise.
- **D50**: the size of which 50 percent is smaller; D15 and D85 likewise. **W50**: the same by the mass
  of the stones.
- **Middle axis**: of the three axes of a stone square to one another, neither the longest nor the
  shortest.
- **Source**: a quarry or pit with its test results. **Lot**: rock that is judged together. **Pile** and
  **load**: where a lot is. **Look**: one act of observation.
- **Riprap**: loose rock as protection. **Bare**, **soil-filled**, **void-filled**: what is between its
  stones.
- **Filter**: what keeps the soil from being washed out through the rock: granular bedding or a
  geotextile. **Toe**: what the foot of the layer stands on, or follows the bed down with.

## Evidence

- **Confidence**: how often, of all such counts, what is stated holds. How often it did on piles whose
  rock is known: [Simulated piles](simulation.md).
- **Owner's risk**: the chance that rock which misses its band is accepted. **Producer's risk**: the
  chance that good rock is refused. [Plans for a count](single-sampling-plan.md).
- **Standing of a source**: *published* where the page was seen, *from memory* where it must be
  confirmed, *common practice* where there is no source.
)";

}  // namespace

HandbookPage field_page() { return {"field.md", field_text}; }

HandbookPage words_page() { return {"words.md", words_text}; }

}  // namespace proofstone
