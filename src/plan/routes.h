// The needlework of cut areas as routes: the thread's thickness on this cloth, where a thread is begun, what lessons ask for.
#pragma once

#include "plan/plan.h"

namespace plan {

/// Bars and fillings of each cutting that has any, nothing scheduled yet; what cannot be filled is told.
std::vector<PartRoute> routes_of(const course::Course& course, const std::vector<PartCutting>& cuttings, std::vector<Finding>& findings);

/// Gives the work to the route: the stage it names, or any. Doubled work, and ranges beyond the last item, are told.
void take_route(const course::Course& course, const course::WorkItem& work, int lesson, int& item, PartRoute& route, std::vector<Finding>& findings);

/// Minutes of each item, by the speeds of bars and fillings.
std::vector<double> minutes_of(const course::Course& course, const PartRoute& route);

/// "heart / bars", "heart / bars / 1..18".
std::string work_text(const course::Course& course, const PartRoute& route, int first, int last);

/// Of a part whose cutting is withheld nothing is worked.
void withhold_routes(Plan& plan);

}  // namespace plan
