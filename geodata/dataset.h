#pragma once

#include <gdal_priv.h>

#include <memory>

namespace proofstone {

struct CloseDataset {
  void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};
/// A file that GDAL has open.
using Dataset = std::unique_ptr<GDALDataset, CloseDataset>;

}  // namespace proofstone
