using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class StashLotConfiguration : IEntityTypeConfiguration<StashLot>
{
    public void Configure(EntityTypeBuilder<StashLot> lot)
    {
        lot.ToTable("StashLots");
        lot.Property(it => it.Id).ValueGeneratedNever();
        lot.Property(it => it.DyeLot).HasMaxLength(StashLot.NameLength);
        lot.Property(it => it.Place).HasMaxLength(StashLot.NameLength);
        lot.Property(it => it.Note).HasMaxLength(StashLot.NoteLength);
        lot.Property(it => it.RowVersion).IsConcurrencyToken();
        lot.Ignore(it => it.Details);
        lot.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
        lot.HasOne<Yarn>().WithMany().HasForeignKey(it => it.YarnId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class ReservationConfiguration : IEntityTypeConfiguration<Reservation>
{
    public void Configure(EntityTypeBuilder<Reservation> reservation)
    {
        reservation.ToTable("Reservations");
        reservation.HasKey(it => new { it.DesignId, it.LotId });
        reservation.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Restrict);
        reservation.HasOne<StashLot>().WithMany().HasForeignKey(it => it.LotId).OnDelete(DeleteBehavior.Cascade);
    }
}
