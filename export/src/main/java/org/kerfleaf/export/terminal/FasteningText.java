package org.kerfleaf.export.terminal;

import java.util.List;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.joint.SettingWords;
import org.kerfleaf.plan.FastenedAlike;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.site.SitePlan;

/** How each joint is fastened: what is drilled, how far it reaches, where it stands, what it holds. */
final class FasteningText {
    private FasteningText() {}

    static void write(Plan plan, Page page) {
        SettingWords words = new SettingWords(plan.style());
        List<FastenedAlike> alike = plan.fastening().alike();
        for (FastenedAlike one : alike) {
            page.hanging("", "%s: %d × %s".formatted(one.contact(), one.count(), one.fastener()));
            page.hanging("    drill    ", words.holes(one.setting()));
            page.hanging("    reach    ", words.reach(one.setting()));
            page.hanging("    nearest  ", words.stands(one.clearances()));
            page.hanging("    holds    ", words.holds(one.setting()));
            page.hanging("    sideways ", words.across(one.setting()));
        }
        for (GluedJoint glued : plan.fastening().glued()) {
            page.hanging("", glued.joint() + ": glued");
            page.hanging("    glue     ", words.glued(glued));
        }
        if (alike.stream().anyMatch(one -> SettingWords.tellsAForce(one.setting()))) {
            page.blank();
            page.paragraph(SettingWords.LOADS + " " + SitePlan.DEFERS);
        }
        if (!plan.fastening().choices().isEmpty()) {
            page.blank();
            plan.fastening().choices().forEach(choice -> page.paragraph(words.chosen(choice)));
        }
        page.beforeReasons();
        plan.fastening()
                .choices()
                .forEach(choice -> page.why(choice.joint() + ", screw from the drawer", choice.length()));
        for (GluedJoint glued : plan.fastening().glued()) {
            page.why(glued.joint() + ", glued area", glued.area());
            page.why(glued.joint() + ", glue", glued.grams());
            page.why(glued.joint() + ", time to close", glued.closing());
            page.why(glued.joint() + ", clamps", glued.clamps());
        }
        alike.forEach(one -> reasons(page, one.contact() + ", ", one.setting()));
    }

    private static void reasons(Page page, String what, FastenerSetting setting) {
        page.why(what + "clearance hole", setting.clearance());
        page.why(what + "pilot hole", setting.pilot());
        page.why(what + "hole where it is pulled", setting.leadHole());
        page.why(what + "countersink, wide", setting.head());
        page.why(what + "countersink, deep", setting.sunk());
        page.why(what + "reach", setting.reach());
        page.why(what + "reach in diameters", setting.diameters());
        page.why(what + "beyond the tip", setting.tip());
        page.why(what + "thread in the second part", setting.thread());
        page.why(what + "specific gravity", setting.gravity());
        page.why(what + "holds", setting.holds());
        page.why(what + "holds in damp wood", setting.holdsDamp());
        page.why(what + "holds sideways", setting.across().holds());
        page.why(what + "holds sideways in damp wood", setting.across().holdsDamp());
    }
}
