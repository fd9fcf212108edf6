// All that is mailed to a class, in one folder or one ZIP: letter, pages, pictures, review pages, film, calendar, shopping list.
#pragma once

#include <vector>

#include "publish/forms.h"

namespace publish {

/// Paths of the jobs are those within the packet. Written again only where something changed; interrupted, the old one stays whole.
base::Result<Written> print_packet(const Making& making, const std::vector<Job>& jobs, Types& types, const std::stop_token& stop,
                                   const std::function<void(int done, int of)>& progress);

/// Letter, calendar (where a lesson has a day) and shopping list. A calendar that says the same as the one in the packet made before keeps
/// its stamp.
std::vector<Job> packet_papers(const Making& making);

/// A short letter to the students: when they meet, what is done, what to bring, what lies in the packet.
std::string letter(const say::Voice& voice, const plan::Plan& plan, const list::Measure& measure);

/// The name, in the course's language, of a file or folder in a packet: "packet.KEY" of the phrases as letters, digits and hyphens.
std::string name_in_packet(const words::Phrases& phrases, const std::string& key);
/// Of the calendar, with its ending.
std::string calendar_file(const words::Phrases& phrases);

/// Where the packet goes.
std::filesystem::path packet_path(const Making& making);

}  // namespace publish
