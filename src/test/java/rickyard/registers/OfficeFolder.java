package rickyard.registers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/** A registers folder in the making; starts as a small office in which nothing is wrong. */
final class OfficeFolder {
  static final LocalDate AS_OF = LocalDate.of(2026, 5, 11);

  static final String CLIENTS =
      """
      client_id,name,email,phone,adviser,units
      C1,Ash Farm,ash@example.org,0100,A1,kg
      C2,Birch Farm,,,A1,lb
      """;
  static final String HORSES =
      """
      horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to
      H1,C1,Alder,horse,2012-04,512.5,tape,2026-05-01,480,,maintenance,,,6.5,insulin-dysregulation;ppid,2,no,0,no,none,,,
      H2,C1,Bracken,pony,,210,,,,,work,moderate,,5,,,,,,,,,
      H3,C2,Clover,horse,2016-01,600,scale,,,,pregnant,,9,5,,2,yes,6,yes,treats,,,
      H4,C2,Dill,horse,2025-04,310,scale,,,560,growing,,,5,,2,no,6,no,treats,,2026-06-01,2026-06-03
      """;
  static final String LOTS =
      """
      lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,price_per_tonne,for_sale,cores,sampled_on,sampled_by
      L1,C1,grass-hay,5,1,2025-06-14,12000,18.5,140,yes,12,2025-08-01,Ash
      L2,co-op,haylage,,2,,0,,,,,,
      """;
  static final String DELIVERIES =
      """
      lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on
      L2,C1,900,2026-05-09,L1,2026-05-20,,
      """;
  static final String FEEDS =
      """
      feed_id,name,role,form,batch,dm_pct,wsc_pct_dm,wsc_kind,starch_pct_af,starch_kind,starch_u,ca_g_per_kg_af,cu_mg_per_kg_dm,de_mj_per_kg_dm,vit_e_iu_per_kg_af,bag_kg,price_per_bag,bagged_on,shelf_life_months,full_rate_pct_bw_low,full_rate_pct_bw_high,dose_kg_per_day_low,dose_kg_per_day_high,complete
      F1,Plain cubes,balancer,pellets,,88,6.0,,4.4,max,,22,30,12.552,440,20,30,,,,,0.4,0.6,no
      F2,Tested chop,controlled-forage,chopped,B7,90,7.1,batch,1.8,batch,0.3,,,,,20,18,2026-03-01,12,1.5,2,,,no
      F2,Tested chop,controlled-forage,chopped,B8,90,7.4,batch,1.6,batch,,,,,,20,18,2026-04-01,12,1.5,2,,,no
      """;
  static final String RATIONS =
      """
      horse_id,item,batch,amount,unit,fed,meals,prepared,since
      H1,L1,,8.5,kg,forage,3,soaked,2026-01-01
      H1,F1,,0.5,kg,bucket,2,dry,2026-01-01
      H1,F2,B7,1.5,pct_bw,forage,3,dry,2026-06-01
      H2,L1,,,ad-lib,forage,,,2026-01-01
      H3,L2,,1,bale,forage,,,2026-01-01
      """;
  static final String MEASURES =
      """
      client_id,item,measure,kg,weighed_on
      C2,L2,bale,21.5,2026-04-01
      C1,F1,scoop,0.45,
      """;
  static final String ANSWERS =
      """
      question_id,answer,by,on,note
      Q1,dry matter,Ash,2026-05-10,"said, by phone"
      """;
  static final String DECISIONS =
      """
      date,about,kind,value,start_on,by,why
      2026-05-09,H1,told,,,Ash,rang
      2026-05-10,L1,override,clears,,Ash,'=second test
      """;

  private final Path folder;

  OfficeFolder(Path folder) {
    this.folder = folder;
    with("clients.csv", CLIENTS);
    with("horses.csv", HORSES);
    with("lots.csv", LOTS);
    with("deliveries.csv", DELIVERIES);
    with("feeds.csv", FEEDS);
    with("rations.csv", RATIONS);
    with("measures.csv", MEASURES);
    with("answers.csv", ANSWERS);
    with("decisions.csv", DECISIONS);
  }

  OfficeFolder with(String file, String text) {
    return with(file, text.getBytes(StandardCharsets.UTF_8));
  }

  OfficeFolder with(String file, byte[] bytes) {
    try {
      Files.write(folder.resolve(file), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  OfficeFolder without(String file) {
    try {
      Files.delete(folder.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  Loaded load() {
    return load(LoadContext.of(AS_OF));
  }

  Loaded load(LoadContext context) {
    return Registers.load(folder, context);
  }
}
